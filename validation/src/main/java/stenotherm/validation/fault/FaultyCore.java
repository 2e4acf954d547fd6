package stenotherm.validation.fault;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Copies of core with and without faults: compiles the sources of a tree into a folder of its own,
 * and asks for known answers with those classes in place of the program's.
 *
 * <p>Internal. Not thread-safe.
 */
final class FaultyCore {
  private static final String SOURCES = "core/src/main/java";

  /** Longest wait for an answer [s]. */
  private static final long PATIENCE = 60;

  private final Path tree;
  private final Path folder;
  private final Path sound;
  private final List<KnownAnswer> answers;
  private final List<Path> program;

  /**
   * Compiles the tree's core as it is.
   *
   * @param tree the source tree
   * @param folder where to put what is made; its old contents are overwritten
   * @param answers what to ask for
   * @throws FaultException if it does not compile, or there is no compiler
   */
  FaultyCore(Path tree, Path folder, List<KnownAnswer> answers) throws IOException {
    this.tree = tree;
    this.folder = folder;
    this.answers = answers;
    this.sound = folder.resolve("sound");
    this.program =
        Stream.of(System.getProperty("java.class.path", "").split(File.pathSeparator))
            .map(Path::of)
            .toList();
    List<Path> files;
    Path sources = tree.resolve(SOURCES);
    try (Stream<Path> walked = Files.walk(sources)) {
      files = walked.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
    List<Path> copies = new ArrayList<>();
    for (Path file : files) {
      String relative = sources.relativize(file).toString();
      copies.add(write(sound.resolve("sources").resolve(relative), Files.readString(file)));
    }
    compile(copies, sound, List.of());
  }

  private static Path write(Path file, String text) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    return Files.writeString(file, text);
  }

  private void compile(List<Path> sources, Path into, List<Path> first) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    if (compiler == null) {
      throw new FaultException("no compiler here; run with a JDK, not with a mere runtime");
    }
    Path classes = into.resolve("classes");
    Files.createDirectories(classes);
    List<String> path = new ArrayList<>();
    first.forEach(part -> path.add(part.toString()));
    program.forEach(part -> path.add(part.toString()));
    List<String> options =
        List.of(
            "-d",
            classes.toString(),
            "-classpath",
            String.join(File.pathSeparator, path),
            "-proc:none",
            "-implicit:none",
            "-nowarn");
    StringWriter messages = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(sources);
      if (!compiler.getTask(messages, files, null, options, null, units).call()) {
        throw new FaultException("does not compile:\n" + messages);
      }
    }
  }

  /**
   * Asks the core without a fault.
   *
   * @return what is wrong with each answer; empty for those that are right
   */
  Map<KnownAnswer, String> ask() throws IOException {
    return ask(List.of(sound.resolve("classes")));
  }

  /**
   * Asks a core with a fault.
   *
   * @return what is wrong with each answer; empty for those that are right
   * @throws FaultException if the fault's patch does not fit or does not compile
   */
  Map<KnownAnswer, String> ask(Fault fault) throws IOException {
    Path own = folder.resolve(fault.name());
    List<Path> changed = new ArrayList<>();
    for (Map.Entry<String, String> file : fault.patch().apply(this::read).entrySet()) {
      String relative = file.getKey().substring(SOURCES.length() + 1);
      changed.add(write(own.resolve("sources").resolve(relative), file.getValue()));
    }
    List<Path> classes = List.of(sound.resolve("classes"));
    compile(changed, own, classes);
    return ask(List.of(own.resolve("classes"), classes.get(0)));
  }

  private String read(String file) {
    if (!file.startsWith(SOURCES + "/")) {
      throw new FaultException("changes '" + file + "', which is no source of core");
    }
    try {
      return Files.readString(tree.resolve(file));
    } catch (IOException missing) {
      throw new FaultException("changes '" + file + "', which cannot be read", missing);
    }
  }

  /** Asks with classes that come before those of the program. */
  private Map<KnownAnswer, String> ask(List<Path> first) throws IOException {
    List<URL> path = new ArrayList<>();
    for (Path part : Stream.concat(first.stream(), program.stream()).toList()) {
      path.add(url(part));
    }
    Map<KnownAnswer, String> wrong = new LinkedHashMap<>();
    // not the program's own loader as the parent: it would give its own core
    try (URLClassLoader loader =
        new URLClassLoader(path.toArray(new URL[0]), ClassLoader.getPlatformClassLoader())) {
      Method failure =
          loader.loadClass(KnownAnswer.class.getName()).getMethod("failure", String.class);
      for (KnownAnswer answer : answers) {
        wrong.put(answer, ask(failure, answer));
      }
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("the program's own classes are not there", impossible);
    }
    return wrong;
  }

  private static URL url(Path path) {
    try {
      return path.toUri().toURL();
    } catch (MalformedURLException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String ask(Method failure, KnownAnswer answer) {
    FutureTask<String> asked = new FutureTask<>(() -> (String) failure.invoke(null, answer.name()));
    Thread thread = new Thread(asked, "answer");
    thread.setDaemon(true);
    thread.start();
    try {
      return asked.get(PATIENCE, TimeUnit.SECONDS);
    } catch (TimeoutException late) {
      thread.interrupt();
      return "no answer in " + PATIENCE + " s";
    } catch (ExecutionException unexpected) {
      return String.valueOf(unexpected.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new FaultException("interrupted", interrupted);
    }
  }
}
