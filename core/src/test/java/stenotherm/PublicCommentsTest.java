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
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * The comments of what programs can call: every number has its unit in [brackets], [-] if it has
 * none, and every exception that a method itself throws is told.
 */
class PublicCommentsTest {
  private static final Set<String> NUMBERS = Set.of("double", "double[]", "double[][]");

  private final List<String> problems = new ArrayList<>();
  private int numbers;

  @Test
  void numbersHaveUnitsAndExceptionsAreTold() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"));
        StandardJavaFileManager manager =
            compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(sources));
      DocTrees comments = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new Reader(comments).scan(unit, null);
      }
    }
    assertTrue(numbers > 700, "numbers in public signatures: " + numbers);
    assertEquals("", String.join("\n", problems), () -> problems.size() + " gaps");
  }

  /** Reads one file. What an overriding method adds is told where it is declared. */
  private final class Reader extends TreePathScanner<Void, Void> {
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
        if (method.getReturnType() != null && isNumber(method.getReturnType())) {
          unit(
              method.getName() + " returns",
              tags(ReturnTree.class).map(ReturnTree::getDescription));
        }
      }
      Set<String> thrown = new TreeSet<>();
      new Thrown().scan(method.getBody(), thrown);
      List<String> told =
          tags(ThrowsTree.class).map(tag -> simple(tag.getExceptionName().toString())).toList();
      thrown.stream()
          .filter(each -> !told.contains(each))
          .forEach(each -> problem(method.getName() + " throws " + each));
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
      if (isNumber(parameter.getType())) {
        unit(
            "parameter " + parameter.getName(),
            tags(ParamTree.class)
                .filter(tag -> tag.getName().toString().contentEquals(parameter.getName()))
                .map(ParamTree::getDescription));
      }
    }

    private void unit(String what, Stream<? extends List<? extends DocTree>> texts) {
      numbers++;
      Optional<String> text = texts.map(String::valueOf).findFirst();
      if (text.filter(words -> words.matches("(?s).*\\[[^\\]]+\\].*")).isEmpty()) {
        problem(what + ", no unit: " + text.orElse(""));
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

    private void problem(String text) {
      CompilationUnitTree unit = getCurrentPath().getCompilationUnit();
      long start = comments.getSourcePositions().getStartPosition(unit, getCurrentPath().getLeaf());
      String file = String.valueOf(Path.of(unit.getSourceFile().getName()).getFileName());
      problems.add(file + ":" + unit.getLineMap().getLineNumber(start) + ": " + text);
    }

    private boolean isNumber(Tree type) {
      return NUMBERS.contains(type.toString());
    }

    private boolean isSeen(ModifiersTree modifiers) {
      TreePath parent = getCurrentPath().getParentPath();
      boolean inInterface =
          parent.getLeaf() instanceof ClassTree owner && owner.getKind() == Tree.Kind.INTERFACE;
      return modifiers.getFlags().contains(Modifier.PUBLIC)
          || inInterface && !modifiers.getFlags().contains(Modifier.PRIVATE);
    }
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

  /** What a body throws by itself, at once. */
  private static final class Thrown extends TreeScanner<Void, Set<String>> {
    @Override
    public Void visitThrow(ThrowTree thrown, Set<String> names) {
      if (thrown.getExpression() instanceof NewClassTree made) {
        names.add(simple(made.getIdentifier().toString()));
      }
      return super.visitThrow(thrown, names);
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
}
