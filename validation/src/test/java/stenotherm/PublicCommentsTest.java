package stenotherm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The comments of what programs can call, in core and shared: every number has its unit in
 * [brackets], [-] if it has none; every array or list of numbers tells how long it is or in which
 * order; every exception that a method itself throws, or a check that it calls, is told; every
 * number of a law or a catalogue has its source.
 */
class PublicCommentsTest {
  private static final Set<String> NUMBERS =
      Set.of("double", "double[]", "double[][]", "OptionalDouble", "Optional<Double>");

  /** Arrays of any kind but texts, and collections that hold numbers. */
  private static final Pattern SERIES =
      Pattern.compile("(?!char|byte|String).*\\[\\]|List<(Double|Integer|Long|.*\\[\\])>");

  /** Collections of which each number has a unit. */
  private static final Pattern NUMBER_SERIES =
      Pattern.compile("(List|Map|Supplier)<.*\\b(Double|double).*>");

  /** Tells a length, an order, or both. */
  private static final Pattern SHAPE =
      Pattern.compile(
          "\\b(for|at|of|to) (each|every)\\b|\\bascending\\b|\\bin (the|their|no) (\\S+ )?order\\b"
              + "|\\border of\\b|\\blength\\b|\\bas long as\\b|\\bindex\\b|\\bindices\\b"
              + "|\\b(two|three|four|six) values\\b|\\[\\w+ ?\\w*\\]\\[");

  /** Where laws and catalogues stand. */
  private static final Set<String> OF_PUBLISHED_VALUES =
      Set.of("base", "material", "air", "warmer", "ambient", "animal", "parcel", "journey", "sun");

  /** An author or a body and a year, or a word that says that there is none. */
  private static final Pattern CITATION =
      Pattern.compile(
          "\\p{Lu}[\\p{L}'.-]+( et al\\.?| and \\p{Lu}[\\p{L}'-]+)?,? (\\p{Lu}[^.;]{0,40} )?"
              + "\\(?(1[6-9]|20)\\d\\d\\b"
              + "|\\bISO \\d+|\\bassum|\\bcommon practice\\b|\\bfrom memory\\b"
              + "|\\bexact\\b|\\bby definition\\b"
              + "|\\bSource\\.(read|memory|derived|assumed|practice)\\b");

  /** Digits of a day in minutes and seconds, and of ten years in days. */
  private static final Set<String> UNITS = Set.of("144", "864", "3653");

  private static final BigDecimal CELSIUS_ZERO = new BigDecimal("273.15");

  private static final List<String> UNIT_PROBLEMS = new ArrayList<>();
  private static final List<String> SHAPE_PROBLEMS = new ArrayList<>();
  private static final List<String> THROWS_PROBLEMS = new ArrayList<>();
  private static final List<String> SOURCE_PROBLEMS = new ArrayList<>();

  /** Names of constants that are sources, by which comments and code may cite. */
  private static final Set<String> SOURCES = new HashSet<>();

  private static int numbers;
  private static int series;
  private static int published;

  @BeforeAll
  static void read() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    for (String module : List.of("core", "shared")) {
      try (Stream<Path> files = Files.walk(root().resolve(module).resolve("src/main/java"));
          StandardJavaFileManager manager =
              compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
        List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
        JavacTask task =
            (JavacTask)
                compiler.getTask(
                    null,
                    manager,
                    null,
                    List.of("-proc:none"),
                    null,
                    manager.getJavaFileObjectsFromPaths(sources));
        DocTrees comments = DocTrees.instance(task);
        List<CompilationUnitTree> units = new ArrayList<>();
        task.parse().forEach(units::add);
        units.forEach(unit -> new SourceNames().scan(unit, null));
        for (CompilationUnitTree unit : units) {
          new Reader(comments).scan(unit, null);
          if (OF_PUBLISHED_VALUES.contains(simple(unit.getPackageName().toString()))) {
            new Values(comments, unit).scan(unit, null);
          }
        }
      }
    }
  }

  /** Found from the compiled test, so that it does not matter where the tests are started. */
  private static Path root() {
    try {
      Path folder =
          Path.of(
              PublicCommentsTest.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      while (!Files.isDirectory(folder.resolve("core/src/main/java"))) {
        folder = folder.getParent();
      }
      return folder;
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void numbersHaveUnits() {
    assertTrue(numbers > 900, "numbers in public signatures: " + numbers);
    assertNone(UNIT_PROBLEMS);
  }

  @Test
  void seriesHaveLengthOrOrder() {
    assertTrue(series > 120, "arrays and lists of numbers: " + series);
    assertNone(SHAPE_PROBLEMS);
  }

  @Test
  void exceptionsAreTold() {
    assertNone(THROWS_PROBLEMS);
  }

  @Test
  void publishedValuesHaveTheirSource() {
    assertTrue(published > 150, "laws and values: " + published);
    assertNone(SOURCE_PROBLEMS);
  }

  private static void assertNone(List<String> problems) {
    assertEquals("", String.join("\n", problems), () -> problems.size() + " gaps");
  }

  /** Reads one file. What an overriding method adds is told where it is declared. */
  private static final class Reader extends TreePathScanner<Void, Void> {
    private final DocTrees comments;

    Reader(DocTrees comments) {
      this.comments = comments;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      if (!isSeen(type.getModifiers())) {
        return null;
      }
      if (type.getKind() == Tree.Kind.RECORD) {
        parts(type).forEach(this::parameter);
      }
      return super.visitClass(type, nothing);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      boolean overrides =
          method.getModifiers().getAnnotations().stream()
              .anyMatch(each -> each.getAnnotationType().toString().equals("Override"));
      if (overrides || !isSeen(method.getModifiers())) {
        return null;
      }
      if (comment().isPresent() && !repeatsItsRecord(method)) {
        method.getParameters().forEach(this::parameter);
        if (method.getReturnType() != null) {
          read(
              method.getName() + " returns",
              method.getReturnType(),
              tags(ReturnTree.class).map(ReturnTree::getDescription));
        }
      }
      Set<String> thrown = new TreeSet<>();
      new Thrown().scan(method.getBody(), thrown);
      List<String> told =
          tags(ThrowsTree.class).map(tag -> simple(tag.getExceptionName().toString())).toList();
      thrown.stream()
          .filter(each -> !told.contains(each))
          .forEach(each -> problem(THROWS_PROBLEMS, method.getName() + " throws " + each));
      return null;
    }

    /** The parameters of such a constructor are the record's, which tells them. */
    private boolean repeatsItsRecord(MethodTree method) {
      return method.getReturnType() == null
          && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type
          && type.getKind() == Tree.Kind.RECORD
          && names(method.getParameters().stream()).equals(names(parts(type)));
    }

    private void parameter(VariableTree parameter) {
      read(
          "parameter " + parameter.getName(),
          parameter.getType(),
          tags(ParamTree.class)
              .filter(tag -> tag.getName().toString().contentEquals(parameter.getName()))
              .map(ParamTree::getDescription));
    }

    private void read(String what, Tree type, Stream<? extends List<? extends DocTree>> texts) {
      String kind = type.toString();
      String text =
          texts
              .findFirst()
              .map(parts -> parts.stream().map(String::valueOf).collect(Collectors.joining()))
              .orElse("")
              .replaceAll("\\s+", " ");
      if (NUMBERS.contains(kind) || NUMBER_SERIES.matcher(kind).matches()) {
        numbers++;
        if (!text.matches(".*\\[[^\\]]+\\].*")) {
          problem(UNIT_PROBLEMS, what + ", no unit: " + text);
        }
      }
      if (SERIES.matcher(kind).matches()) {
        series++;
        if (!SHAPE.matcher(text).find()) {
          problem(SHAPE_PROBLEMS, what + ", neither length nor order: " + text);
        }
      }
    }

    private <T extends DocTree> Stream<T> tags(Class<T> kind) {
      return comment().stream()
          .flatMap(comment -> comment.getBlockTags().stream())
          .filter(kind::isInstance)
          .map(kind::cast);
    }

    private Optional<DocCommentTree> comment() {
      return Optional.ofNullable(comments.getDocCommentTree(getCurrentPath()));
    }

    private void problem(List<String> problems, String text) {
      problems.add(place(comments, getCurrentPath()) + text);
    }

    private boolean isSeen(ModifiersTree modifiers) {
      TreePath parent = getCurrentPath().getParentPath();
      boolean inInterface =
          parent.getLeaf() instanceof ClassTree owner && owner.getKind() == Tree.Kind.INTERFACE;
      return modifiers.getFlags().contains(Modifier.PUBLIC)
          || inInterface && !modifiers.getFlags().contains(Modifier.PRIVATE);
    }
  }

  private static String place(DocTrees comments, TreePath path) {
    CompilationUnitTree unit = path.getCompilationUnit();
    long start = comments.getSourcePositions().getStartPosition(unit, path.getLeaf());
    String file = String.valueOf(Path.of(unit.getSourceFile().getName()).getFileName());
    return file + ":" + unit.getLineMap().getLineNumber(start) + ": ";
  }

  private static Stream<VariableTree> parts(ClassTree type) {
    return type.getMembers().stream()
        .filter(VariableTree.class::isInstance)
        .map(VariableTree.class::cast)
        .filter(part -> !part.getModifiers().getFlags().contains(Modifier.STATIC));
  }

  private static List<String> names(Stream<? extends VariableTree> variables) {
    return variables.map(each -> each.getName().toString()).toList();
  }

  private static String simple(String name) {
    return name.replaceAll(".*\\.", "");
  }

  /** What a body throws by itself or by a check, at once. A null needs no telling. */
  private static final class Thrown extends TreeScanner<Void, Set<String>> {
    private static final Pattern CHECK =
        Pattern.compile("Suggestions\\.(unknown|find)|Checks\\.(?!given|show|notInterrupted)\\w+");

    @Override
    public Void visitThrow(ThrowTree thrown, Set<String> names) {
      if (thrown.getExpression() instanceof NewClassTree made) {
        names.add(simple(made.getIdentifier().toString()));
      }
      return super.visitThrow(thrown, names);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Set<String> names) {
      if (CHECK.matcher(call.getMethodSelect().toString()).matches()) {
        names.add("InvalidInputException");
      }
      return super.visitMethodInvocation(call, names);
    }

    @Override
    public Void visitLambdaExpression(LambdaExpressionTree later, Set<String> names) {
      return null;
    }

    @Override
    public Void visitClass(ClassTree inner, Set<String> names) {
      return null;
    }
  }

  /** Collects the constants that are sources. */
  private static final class SourceNames extends TreeScanner<Void, Void> {
    @Override
    public Void visitVariable(VariableTree variable, Void nothing) {
      if (variable.getType() != null
          && variable.getType().toString().equals("Source")
          && variable.getModifiers().getFlags().contains(Modifier.STATIC)) {
        SOURCES.add(variable.getName().toString());
      }
      return super.visitVariable(variable, nothing);
    }
  }

  /**
   * Looks for numbers that nobody knows by heart, in constants and methods, public or not. Their
   * source stands in the comment or the code of the constant or method, or in the comment of a
   * class around it.
   */
  private static final class Values extends TreePathScanner<Void, Void> {
    private final DocTrees comments;
    private final CompilationUnitTree unit;
    private final String text;

    Values(DocTrees comments, CompilationUnitTree unit) throws IOException {
      this.comments = comments;
      this.unit = unit;
      this.text = unit.getSourceFile().getCharContent(true).toString();
    }

    @Override
    public Void visitVariable(VariableTree variable, Void nothing) {
      if (getCurrentPath().getParentPath().getLeaf() instanceof ClassTree) {
        look(variable, variable.getName().toString(), variable.getInitializer());
      }
      return null;
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      look(method, method.getName().toString(), method.getBody());
      return null;
    }

    private void look(Tree member, String name, @Nullable Tree code) {
      Set<String> values = new TreeSet<>();
      new Telling().scan(code, values);
      if (values.isEmpty()) {
        return;
      }
      published++;
      SourcePositions positions = comments.getSourcePositions();
      StringBuilder around = new StringBuilder();
      around.append(
          text,
          (int) positions.getStartPosition(unit, member),
          (int) positions.getEndPosition(unit, member));
      for (TreePath path = getCurrentPath(); path != null; path = path.getParentPath()) {
        if (path.getLeaf() == member || path.getLeaf() instanceof ClassTree) {
          around.append('\n').append(Objects.requireNonNullElse(comments.getDocComment(path), ""));
        }
      }
      String all = around.toString().replaceAll("\\s+", " ");
      boolean namesSource =
          Pattern.compile("\\b[A-Z][A-Z_]+\\b")
              .matcher(all)
              .results()
              .anyMatch(word -> SOURCES.contains(word.group()));
      if (!namesSource && !CITATION.matcher(all).find()) {
        SOURCE_PROBLEMS.add(place(comments, getCurrentPath()) + name + " has no source: " + values);
      }
    }
  }

  /**
   * Fractions of two digits or more, whole numbers of three or more, but for whole °C in kelvin.
   */
  private static final class Telling extends TreeScanner<Void, Set<String>> {
    @Override
    public Void visitLiteral(LiteralTree literal, Set<String> values) {
      if (literal.getValue() instanceof Number number) {
        BigDecimal value = new BigDecimal(number.toString()).abs();
        if (value.subtract(CELSIUS_ZERO).stripTrailingZeros().scale() <= 0) {
          return null;
        }
        String digits = value.stripTrailingZeros().unscaledValue().toString();
        int few = number instanceof Double ? 2 : 3;
        if (digits.length() >= few && !UNITS.contains(digits)) {
          values.add(number.toString());
        }
      }
      return null;
    }

    /** Limits of what a caller may give. */
    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Set<String> values) {
      boolean isCheck = call.getMethodSelect().toString().startsWith("Checks.");
      return isCheck ? null : super.visitMethodInvocation(call, values);
    }

    @Override
    public Void visitClass(ClassTree inner, Set<String> values) {
      return null;
    }
  }
}
