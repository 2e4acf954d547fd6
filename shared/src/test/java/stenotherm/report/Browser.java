package stenotherm.report;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A browser without a window, run by its command line: the Chromium of a distribution. */
final class Browser {
  private static final int SECONDS = 60;

  private static final String FRAME =
      "<iframe style=\"border: 0; width: %dpx; height: 2000px\" srcdoc=\"%s\"></iframe>\n";

  private final Path program;
  private final Path folder;

  private Browser(Path program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /** What a page looked like to a script at each width, and what the browser complained about. */
  record Seen(List<String> texts, List<String> complaints) {}

  /** The browser, if there is one on the path. */
  static Optional<Browser> in(Path folder) {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .flatMap(place -> Stream.of("chromium", "chromium-browser").map(Path.of(place)::resolve))
        .filter(Files::isExecutable)
        .findFirst()
        .map(program -> new Browser(program, folder));
  }

  /**
   * Shows a page in frames of several widths and runs a script for each.
   *
   * @param page the page
   * @param widths widths of the frames [pixel]
   * @param script the body of a function of the frame's window {@code view} that returns a text
   */
  Seen look(String page, List<Integer> widths, String script)
      throws IOException, InterruptedException {
    String source = page.replace("&", "&amp;").replace("\"", "&quot;");
    StringBuilder frames = new StringBuilder();
    for (int width : widths) {
      frames.append(FRAME.formatted(width, source));
    }
    String around =
        """
        <!DOCTYPE html><html><body style="margin: 0">
        %s
        <script>
        window.onload = () => document.querySelectorAll('iframe').forEach(frame => {
          const view = frame.contentWindow;
          const seen = document.body.appendChild(document.createElement('pre'));
          seen.className = 'seen';
          seen.textContent = (() => { %s })();
        });
        </script></body></html>
        """
            .formatted(frames, script);
    Path file = Files.writeString(folder.resolve("look.html"), around);
    List<String> complaints = new ArrayList<>();
    String out = run(complaints, "--window-size=1400,2100", "--dump-dom", file.toUri().toString());
    List<String> seen =
        Pattern.compile("<pre class=\"seen\">(.*?)</pre>", Pattern.DOTALL)
            .matcher(out)
            .results()
            .map(found -> found.group(1))
            .map(text -> text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"))
            .toList();
    if (seen.size() != widths.size()) {
      throw new AssertionError("the script did not end: " + out);
    }
    return new Seen(seen, complaints);
  }

  /** Prints a page and counts the sheets of paper. */
  int pagesOnPaper(String page) throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("print.html"), page);
    Path paper = folder.resolve("paper.pdf");
    run(
        new ArrayList<>(),
        "--no-pdf-header-footer",
        "--print-to-pdf=" + paper,
        file.toUri().toString());
    String pdf = new String(Files.readAllBytes(paper), StandardCharsets.ISO_8859_1);
    return (int) Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
  }

  private String run(List<String> complaints, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program.toString(), "--headless"));
    // no sandbox: the page is our own, and the tests may run as root
    command.addAll(List.of("--no-sandbox", "--disable-gpu", "--enable-logging=stderr"));
    command.add("--user-data-dir=" + folder.resolve("profile"));
    command.addAll(List.of(arguments));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("the browser did not end: " + Files.readString(err));
    }
    Files.readString(err).lines().filter(line -> line.contains("CONSOLE")).forEach(complaints::add);
    return Files.readString(out);
  }
}
