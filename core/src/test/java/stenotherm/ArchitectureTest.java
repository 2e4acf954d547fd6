package stenotherm;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaParameter;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Scanner;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The rules of the library's main code that a compiler does not know: which package may use which,
 * what the code must never touch, and what its public signatures must not show.
 */
class ArchitectureTest {
  /** What each package may use; what those use it may use too. */
  private static final Map<String, List<String>> ARROWS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("base", List.of()),
              Map.entry("material", List.of("base")),
              Map.entry("grid", List.of("material")),
              Map.entry("conduction", List.of("grid")),
              Map.entry("modal", List.of("conduction")),
              Map.entry("warmer", List.of("base")),
              Map.entry("air", List.of("base")),
              Map.entry("ambient", List.of("air")),
              Map.entry("animal", List.of("material")),
              Map.entry("parcel", List.of("conduction", "warmer", "air", "animal")),
              Map.entry("journey", List.of("ambient")),
              Map.entry("transit", List.of("parcel", "journey", "modal")),
              Map.entry("study", List.of("transit")),
              Map.entry("decision", List.of("study"))));

  private static final String[] NUMERICS = {"org.ejml..", "org.apache.commons.math3.."};

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages("stenotherm");

  static Set<String> packages() {
    return ARROWS.keySet();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void packageUsesOnlyThoseBelowIt(String name) {
    String[] allowed =
        below(name).stream().map(used -> "stenotherm." + used + "..").toArray(String[]::new);
    check(
        classes()
            .that()
            .resideInAPackage("stenotherm." + name + "..")
            .should()
            .onlyDependOnClassesThat(
                not(resideInAPackage("stenotherm..")).or(resideInAnyPackage(allowed)))
            .because("arrows between packages point down only"));
  }

  private static Set<String> below(String name) {
    Set<String> found = new LinkedHashSet<>();
    found.add(name);
    for (String used : ARROWS.get(name)) {
      found.addAll(below(used));
    }
    return found;
  }

  @Test
  void everyClassIsInAKnownPackage() {
    String[] known =
        packages().stream().map(name -> "stenotherm." + name + "..").toArray(String[]::new);
    check(
        classes()
            .should()
            .resideInAnyPackage(known)
            .because("a new package enters the table of arrows first"));
  }

  @Test
  void packagesAreFreeOfCycles() {
    check(slices().matching("stenotherm.(*)..").should().beFreeOfCycles());
  }

  @Test
  void onlyTheNumericLibrariesAreUsed() {
    check(
        classes()
            .should()
            .onlyDependOnClassesThat(
                resideInAnyPackage("java..", "stenotherm..", "org.jspecify.annotations..")
                    .or(resideInAnyPackage(NUMERICS))
                    .or(describe("are primitive", ArchitectureTest::isPrimitive))));
  }

  private static boolean isPrimitive(JavaClass type) {
    return type.getBaseComponentType().isPrimitive();
  }

  @Test
  void touchesNoFileNetworkOrScreen() {
    check(
        noClasses()
            .should()
            .dependOnClassesThat(
                resideInAnyPackage(
                        "java.nio.file..",
                        "java.net..",
                        "java.awt..",
                        "javax..",
                        "java.util.logging..")
                    .or(
                        describe(
                            "are files or streams of files",
                            type -> type.getName().startsWith("java.io.File")))
                    .or(equivalentTo(Scanner.class)))
            .because("the library computes and nothing else"));
  }

  /** How much memory there may be, by which a grid is refused that would not fit. */
  private static boolean isMemory(JavaAccess<?> access) {
    return access.getOriginOwner().getSimpleName().equals("GridBudget")
        && Set.of("getRuntime", "maxMemory").contains(access.getName());
  }

  @Test
  void touchesNoConsoleOrEnvironment() {
    check(
        noClasses()
            .should()
            .accessTargetWhere(
                accesses(
                    "System (but for arraycopy), the process (but for its memory) or a stack trace",
                    access ->
                        (isOwner(access, System.class) && !access.getName().equals("arraycopy"))
                            || isOwner(access, Runtime.class) && !isMemory(access)
                            || isOwner(access, ProcessHandle.class)
                            || access.getName().equals("printStackTrace"))));
  }

  @Test
  void readsNoClock() {
    check(
        noClasses()
            .should()
            .accessTargetWhere(
                accesses(
                    "the time of day",
                    access ->
                        access.getTargetOwner().getPackageName().startsWith("java.time")
                            && (access.getName().equals("now")
                                || access.getName().startsWith("system")
                                || access.getName().startsWith("tick"))))
            .because("the caller says when a journey begins"));
  }

  /**
   * Java machines have fast forms of some functions, whose last digit is another one: of these from
   * Java 25 on. In 8 % of two million arguments the cube roots of Java 17 and 25 differ.
   */
  @Test
  void sameBitsOnEveryJava() {
    check(
        noClasses()
            .should()
            .accessTargetWhere(
                accesses(
                    "a function whose last digit depends on the version of Java",
                    access ->
                        isOwner(access, Math.class)
                            && Set.of("cbrt", "tanh").contains(access.getName())))
            .because("StrictMath has them with the same bits everywhere, for 3 ns more"));
  }

  @Test
  void drawsNoNumberWithoutASeed() {
    check(
        noClasses()
            .should()
            .accessTargetWhere(
                accesses(
                    "randomness without a seed from the caller",
                    access ->
                        (isOwner(access, Math.class) || isOwner(access, StrictMath.class))
                                && access.getName().equals("random")
                            || access.getName().equals("randomUUID")
                            || isUnseeded(access)))
            .because("same inputs, same bits"));
  }

  private static boolean isUnseeded(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    if (owner.getSimpleName().equals("ThreadLocalRandom")
        || owner.getSimpleName().equals("SecureRandom")) {
      return true;
    }
    boolean random =
        owner.getName().startsWith("java.util.random.")
            || owner.getSimpleName().endsWith("Random")
            || owner.getPackageName().equals("org.apache.commons.math3.random")
                && owner.isAssignableTo("org.apache.commons.math3.random.RandomGenerator");
    boolean makes =
        access.getName().equals("<init>")
            || access.getName().equals("create")
            || access.getName().equals("of")
            || access.getName().equals("getDefault");
    return random
        && makes
        && access.getTarget() instanceof CodeUnitCallTarget target
        && target.getRawParameterTypes().stream()
            .noneMatch(type -> isPrimitive(type) || type.getSimpleName().equals("Random"));
  }

  @Test
  void readsNoResource() {
    check(
        noClasses()
            .should()
            .accessTargetWhere(
                accesses(
                    "a resource",
                    access ->
                        access.getName().startsWith("getResource")
                            || access.getName().startsWith("getSystemResource")))
            .because("catalogues are Java constants"));
  }

  @Test
  void writesNumbersIndependentlyOfTheLocale() {
    check(
        noClasses()
            .should()
            .callMethodWhere(
                describe(
                    "text is made in the default locale", ArchitectureTest::usesDefaultLocale)));
  }

  private static boolean usesDefaultLocale(JavaCall<?> call) {
    boolean hasLocale =
        call.getTarget().getRawParameterTypes().stream()
            .anyMatch(type -> type.getName().equals("java.util.Locale"));
    return isOwner(call, String.class)
        && !hasLocale
        && Set.of("format", "formatted", "toLowerCase", "toUpperCase").contains(call.getName());
  }

  @Test
  void staticFieldsAreFinal() {
    check(fields().that().areStatic().should().beFinal().because("results depend on inputs alone"));
  }

  @Test
  void staticFieldsAreUnmodifiable() {
    check(
        fields()
            .that()
            .areStatic()
            .should()
            .notHaveRawType(
                describe(
                    "of a type made to be changed",
                    type ->
                        type.getName().startsWith("java.util.concurrent.")
                            || type.isAssignableTo(StringBuilder.class)
                            || type.isAssignableTo(StringBuffer.class)
                            || type.isAssignableTo(ThreadLocal.class)
                            || type.isAssignableTo(Random.class)
                            || isMutableCollection(type)))
            .because("a final reference to something mutable is mutable state"));
  }

  @Test
  void staticArraysAreHidden() {
    check(
        fields()
            .that()
            .areStatic()
            .and()
            .areNotPrivate()
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should()
            .notHaveRawType(describe("an array", JavaClass::isArray))
            .because("anyone could write into it"));
  }

  /** A concrete collection of java.util, as against the interface of an unmodifiable copy. */
  private static boolean isMutableCollection(JavaClass type) {
    return type.getPackageName().equals("java.util")
        && !type.isInterface()
        && (type.isAssignableTo(Collection.class) || type.isAssignableTo(Map.class));
  }

  @Test
  void publicSignaturesShowNoNumericLibrary() {
    DescribedPredicate<JavaClass> numeric = resideInAnyPackage(NUMERICS);
    check(
        classes()
            .should(
                satisfy(
                    "not show a type of a numeric library",
                    (type, problems) -> {
                      if (!isSeenByUsers(type)) {
                        return;
                      }
                      Stream.concat(
                              Stream.concat(
                                  type.getSuperclass().stream(), type.getInterfaces().stream()),
                              type.getTypeParameters().stream())
                          .flatMap(seen -> rawTypes(seen).stream())
                          .filter(numeric)
                          .forEach(seen -> problems.add("inherits " + seen.getName()));
                      for (JavaMember member : visibleMembers(type)) {
                        typesOf(member).stream()
                            .flatMap(seen -> rawTypes(seen).stream())
                            .map(JavaClass::getBaseComponentType)
                            .filter(numeric)
                            .forEach(
                                seen ->
                                    problems.add(
                                        member.getFullName() + " shows " + seen.getName()));
                      }
                    }))
            .because("a numeric library must be replaceable without breaking its users"));
  }

  @Test
  void publicRecordsHaveNoArrayComponents() {
    check(
        classes()
            .that()
            .areRecords()
            .should(
                satisfy(
                    "have no array components",
                    (type, problems) -> {
                      if (!isSeenByUsers(type)) {
                        return;
                      }
                      for (JavaField field : type.getFields()) {
                        if (!field.getModifiers().contains(JavaModifier.STATIC)
                            && field.getRawType().isArray()) {
                          problems.add(field.getFullName() + " is an array");
                        }
                      }
                    }))
            .because("an array can be changed after it was checked"));
  }

  @Test
  void publicSignaturesHaveAtMostThreeAdjacentDoubles() {
    check(
        classes()
            .should(
                satisfy(
                    "have at most three adjacent doubles in a public signature",
                    (type, problems) -> {
                      if (!isSeenByUsers(type)) {
                        return;
                      }
                      for (JavaMember member : visibleMembers(type)) {
                        if (member instanceof JavaCodeUnit unit && longestRunOfDoubles(unit) > 3) {
                          problems.add(unit.getFullName());
                        }
                      }
                    }))
            .because("a caller swaps them sooner or later: use a small record or a builder"));
  }

  private static int longestRunOfDoubles(JavaCodeUnit unit) {
    int longest = 0;
    int run = 0;
    for (JavaParameter parameter : unit.getParameters()) {
      run = parameter.getRawType().isEquivalentTo(double.class) ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  }

  @Test
  void everySourcePackageIsDescribedAndNullMarked() throws IOException {
    Path sources = mainSources();
    List<String> problems = new ArrayList<>();
    try (Stream<Path> files = Files.walk(sources)) {
      Set<Path> folders =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .map(Path::getParent)
              .collect(Collectors.toCollection(LinkedHashSet::new));
      for (Path folder : folders) {
        Path info = folder.resolve("package-info.java");
        if (!Files.exists(info)) {
          problems.add(sources.relativize(folder) + " has no package-info.java");
          continue;
        }
        String text = Files.readString(info);
        if (!text.contains("@NullMarked")) {
          problems.add(sources.relativize(info) + " lacks @NullMarked");
        }
        if (!text.contains("Experimental: until version 1.0")) {
          problems.add(sources.relativize(info) + " does not say that nothing is stable yet");
        }
        if (!text.startsWith("/**")) {
          problems.add(sources.relativize(info) + " does not begin with what the package is for");
        }
      }
      assertFalse(folders.isEmpty(), "no sources in " + sources);
    }
    assertEquals(List.of(), problems);
  }

  /** Found from the compiled test, so that it does not matter where the tests are started. */
  private static Path mainSources() {
    try {
      Path folder =
          Path.of(
              ArchitectureTest.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      while (!Files.isDirectory(folder.resolve("src/main/java"))) {
        folder = folder.getParent();
      }
      return folder.resolve("src/main/java");
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("packages")
  void packageHasClasses(String name) {
    assertTrue(
        MAIN.stream().anyMatch(resideInAPackage("stenotherm." + name + "..")),
        "no compiled classes in " + name);
  }

  /** A rule that meets no class is at fault, whatever the defaults of the library. */
  private static void check(ArchRule rule) {
    rule.allowEmptyShould(false).check(MAIN);
  }

  private static boolean isOwner(JavaAccess<?> access, Class<?> owner) {
    return access.getTargetOwner().isEquivalentTo(owner);
  }

  private static DescribedPredicate<JavaAccess<?>> accesses(
      String what, Predicate<JavaAccess<?>> test) {
    return describe("the target is " + what, test);
  }

  private static boolean isSeenByUsers(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(ArchitectureTest::isSeenByUsers).orElse(true);
  }

  private static List<JavaMember> visibleMembers(JavaClass type) {
    return type.getMembers().stream()
        .filter(
            member ->
                member.getModifiers().contains(JavaModifier.PUBLIC)
                    || member.getModifiers().contains(JavaModifier.PROTECTED))
        .toList();
  }

  private static List<JavaType> typesOf(JavaMember member) {
    List<JavaType> types = new ArrayList<>();
    if (member instanceof JavaField field) {
      types.add(field.getType());
    } else if (member instanceof JavaCodeUnit unit) {
      types.add(unit.getReturnType());
      types.addAll(unit.getParameterTypes());
      types.addAll(unit.getTypeParameters());
      types.addAll(unit.getExceptionTypes());
    }
    return types;
  }

  private static Set<JavaClass> rawTypes(JavaType type) {
    return type.getAllInvolvedRawTypes();
  }

  private interface Inspection {
    void inspect(JavaClass type, List<String> problems);
  }

  private static ArchCondition<JavaClass> satisfy(String description, Inspection inspection) {
    return new ArchCondition<>(description) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        List<String> problems = new ArrayList<>();
        inspection.inspect(type, problems);
        for (String problem : problems) {
          events.add(SimpleConditionEvent.violated(type, problem));
        }
      }
    };
  }
}
