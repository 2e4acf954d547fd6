package stenotherm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The rules of main code that hold across modules. What only one module can see is read from the
 * source files of all: no module has all the others on its class path.
 */
class ProjectArchitectureTest {
  /** What each module may use. */
  private static final Map<String, Set<String>> BELOW =
      Map.of(
          "core", Set.of(),
          "shared", Set.of("core"),
          "validation", Set.of("core", "shared"),
          "examples", Set.of("core", "shared"),
          "examples/fleet", Set.of("core", "shared"));

  /** Named with what it builds wherever it is used. */
  private static final String BUILDER = "Builder";

  /** Names that still occur twice; none may be added. */
  private static final Set<String> KNOWN =
      Set.of(
          "Leg",
          "Margin",
          "Parcel",
          "Point",
          "Position",
          "Reduction",
          "Sample",
          "Site",
          "TemperatureBand",
          "Temperatures");

  private static final Map<String, List<CompilationUnitTree>> SOURCES = new TreeMap<>();

  /** Packages of each module that have classes. */
  private static final Map<String, Set<String>> PACKAGES = new TreeMap<>();

  @BeforeAll
  static void parse() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      for (String module : BELOW.keySet()) {
        List<CompilationUnitTree> units = new ArrayList<>();
        JavacTask task =
            (JavacTask)
                compiler.getTask(
                    null,
                    files,
                    null,
                    List.of("-proc:none"),
                    null,
                    files.getJavaFileObjectsFromPaths(sources(module)));
        task.parse().forEach(units::add);
        SOURCES.put(module, units);
        Set<String> packages = new LinkedHashSet<>();
        units.stream()
            .filter(unit -> !unit.getTypeDecls().isEmpty())
            .forEach(unit -> packages.add(unit.getPackageName().toString()));
        PACKAGES.put(module, packages);
      }
    }
  }

  private static List<Path> sources(String module) throws IOException {
    try (Stream<Path> files = Files.walk(root().resolve(module).resolve("src/main/java"))) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  /** Found from the compiled test, so that it does not matter where the tests are started. */
  private static Path root() {
    try {
      Path folder =
          Path.of(
              ProjectArchitectureTest.class
                  .getProtectionDomain()
                  .getCodeSource()
                  .getLocation()
                  .toURI());
      while (!Files.isDirectory(folder.resolve("core/src/main/java"))) {
        folder = folder.getParent();
      }
      return folder;
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"core", "shared", "validation", "examples", "examples/fleet"})
  void moduleImportsOnlyFromThoseBelowIt(String module) {
    Set<String> allowed = new LinkedHashSet<>(PACKAGES.get(module));
    BELOW.get(module).forEach(below -> allowed.addAll(PACKAGES.get(below)));
    List<String> problems = new ArrayList<>();
    for (CompilationUnitTree unit : SOURCES.get(module)) {
      for (String used : importedPackages(unit)) {
        if (!allowed.contains(used)) {
          problems.add(unit.getSourceFile().getName() + " imports from " + used);
        }
      }
    }
    assertEquals(List.of(), problems);
    assertFalse(PACKAGES.get(module).isEmpty(), "no packages in " + module);
  }

  /** Packages of this project from which a file imports. */
  private static Set<String> importedPackages(CompilationUnitTree unit) {
    Set<String> packages = new LinkedHashSet<>();
    for (ImportTree each : unit.getImports()) {
      String name = each.getQualifiedIdentifier().toString();
      if (name.startsWith("stenotherm.")) {
        // the package is what stands before the first name with a capital
        packages.add(name.replaceFirst("\\.[A-Z].*", ""));
      }
    }
    return packages;
  }

  @ParameterizedTest
  @ValueSource(strings = {"core", "shared", "validation", "examples", "examples/fleet"})
  void packagesOfAModuleAreFreeOfCycles(String module) {
    Map<String, Set<String>> uses = new TreeMap<>();
    for (CompilationUnitTree unit : SOURCES.get(module)) {
      Set<String> used =
          uses.computeIfAbsent(unit.getPackageName().toString(), name -> new LinkedHashSet<>());
      used.addAll(importedPackages(unit));
      used.remove(unit.getPackageName().toString());
    }
    assertEquals(Map.of(), cycles(uses));
  }

  /** As imports say, so do the classes, which may use what no file imports. */
  @Test
  void layersOfCompiledClassesPointDownOnly() {
    Map<String, Set<String>> uses = compiledUses();
    // examples are not on the class path of validation
    for (String module : List.of("core", "shared", "validation")) {
      Set<String> allowed = new LinkedHashSet<>(PACKAGES.get(module));
      BELOW.get(module).forEach(below -> allowed.addAll(PACKAGES.get(below)));
      for (String name : PACKAGES.get(module)) {
        Set<String> others = new LinkedHashSet<>(uses.getOrDefault(name, Set.of()));
        others.removeAll(allowed);
        assertEquals(Set.of(), others, name + " uses packages above it");
      }
    }
    assertTrue(uses.size() > 25, "found only " + uses.keySet());
    assertEquals(Map.of(), cycles(uses));
  }

  /** What each package of compiled main code uses of this project, as the JDK's own tool tells. */
  private static Map<String, Set<String>> compiledUses() {
    List<String> arguments = new ArrayList<>(List.of("-verbose:package", "-filter:none"));
    Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(part -> Path.of(part).startsWith(root()) && !part.contains("test-classes"))
        .forEach(arguments::add);
    StringWriter found = new StringWriter();
    java.util.spi.ToolProvider jdeps = java.util.spi.ToolProvider.findFirst("jdeps").orElseThrow();
    int code =
        jdeps.run(new PrintWriter(found), new PrintWriter(found), arguments.toArray(new String[0]));
    assertEquals(0, code, found::toString);
    Map<String, Set<String>> uses = new TreeMap<>();
    Pattern.compile("^ +(stenotherm[\\w.]*) +-> +(stenotherm[\\w.]*) ", Pattern.MULTILINE)
        .matcher(found.toString())
        .results()
        .filter(use -> !use.group(1).equals(use.group(2)))
        .forEach(
            use ->
                uses.computeIfAbsent(use.group(1), name -> new LinkedHashSet<>())
                    .add(use.group(2)));
    return uses;
  }

  /** What is left when whatever uses nothing that is left is taken away: a cycle stays. */
  private static Map<String, Set<String>> cycles(Map<String, Set<String>> uses) {
    Map<String, Set<String>> left = new TreeMap<>(uses);
    boolean shrinks = true;
    while (shrinks) {
      shrinks = left.values().removeIf(used -> used.stream().noneMatch(left::containsKey));
    }
    return left;
  }

  /** Types of a package, and nested ones that other packages see. */
  @Test
  void simpleNamesAreUnique() {
    Map<String, List<String>> places = new TreeMap<>();
    SOURCES.forEach(
        (module, units) -> {
          for (CompilationUnitTree unit : units) {
            for (Tree type : unit.getTypeDecls()) {
              if (type instanceof ClassTree declared) {
                boolean seen = declared.getModifiers().getFlags().contains(Modifier.PUBLIC);
                collect(declared, module + ": " + unit.getPackageName(), seen, places);
              }
            }
          }
        });
    assertTrue(places.size() > 300, "found only " + places.size() + " types");
    places.remove(BUILDER);
    places.keySet().removeAll(KNOWN);
    places.values().removeIf(found -> found.size() == 1);
    assertEquals(Map.of(), places);
  }

  private static void collect(
      ClassTree type, String where, boolean seen, Map<String, List<String>> places) {
    String name = type.getSimpleName().toString();
    String path = where + "." + name;
    places.computeIfAbsent(name, each -> new ArrayList<>()).add(path);
    for (Tree member : type.getMembers()) {
      if (seen && member instanceof ClassTree nested) {
        boolean isPublic =
            type.getKind() == Tree.Kind.INTERFACE
                || nested.getModifiers().getFlags().contains(Modifier.PUBLIC);
        if (isPublic) {
          collect(nested, path, true, places);
        }
      }
    }
  }
}
