package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Month;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The program as a whole: its commands, their helps, what stops it. */
class StenothermTest {
  static Stream<String> names() {
    return Stenotherm.commandLine().getSubcommands().keySet().stream();
  }

  /** The examples in a help are command lines that the program understands. */
  @ParameterizedTest
  @MethodSource("names")
  void everyCommandHasAHelpWithAnExample(String name) {
    Said help = Said.to(name, "--help");
    assertEquals(0, help.code());
    assertTrue(help.out().contains("Exit codes:"), help.out());
    assertTrue(help.out().contains("Example:"), help.out());
    List<String> lines =
        Stream.of(command(name).getCommandSpec().usageMessage().footer())
            .filter(line -> line.startsWith(ConsoleCommand.program()))
            .toList();
    for (String line : lines) {
      assertTrue(help.out().contains(line), help.out());
      String[] words = line.substring(ConsoleCommand.program().length()).split(" +");
      assertEquals(name, words[0]);
      Stenotherm.commandLine().parseArgs(words);
    }
    assertTrue(name.equals("completion") || !lines.isEmpty(), help.out());
  }

  private static CommandLine command(String name) {
    return Stenotherm.commandLine().getSubcommands().get(name);
  }

  @Test
  void helpNamesEveryCommand() {
    Said help = Said.to("--help");
    assertEquals(0, help.code());
    names().forEach(name -> assertTrue(help.out().contains("  " + name + "  "), help.out()));
  }

  @Test
  void thePageOfExamplesHasARowForEveryCommand() throws IOException {
    String page = Files.readString(Path.of("README.md"));
    names().forEach(name -> assertTrue(page.contains(" | `" + name + "` | "), name));
  }

  @Test
  void completionNamesEveryCommandAndItsOptions() {
    Said script = Said.to("completion");
    assertEquals(0, script.code());
    assertTrue(script.out().contains("_complete_stenotherm"), script.out());
    String all = names().collect(Collectors.joining(" "));
    assertTrue(script.out().contains("  local commands=\"" + all + "\"\n"), all);
    names()
        .forEach(
            name -> {
              for (String option : command(name).getCommandSpec().optionsMap().keySet()) {
                boolean hidden = command(name).getCommandSpec().findOption(option).hidden();
                assertTrue(hidden || script.out().contains("'" + option + "'"), option);
              }
            });
  }

  @ParameterizedTest
  @CsvSource({"comapre, compare", "compar, compare", "mpa, map", "serach, search"})
  void aMistypedCommandIsNoFile(String word, String meant) {
    Said wrong = Said.to(word, "my.yaml");
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, wrong.code());
    String told = "there is no command and no file '" + word + "'. Did you mean " + meant + "?";
    assertEquals(told, wrong.err().lines().findFirst().orElseThrow());
    assertTrue(wrong.err().lines().count() <= 2, wrong.err());
  }

  @Test
  void aWordThatIsLikeNoCommandIsToldWithAllOfThem() {
    Said wrong = Said.to("gecko");
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, wrong.code());
    assertTrue(wrong.err().contains(String.join(", ", names().toList())), wrong.err());
  }

  @Test
  void helpIsAWordToo() {
    assertEquals(Said.to("--help").out(), Said.to("help").out());
    assertEquals(Said.to("map", "--help").out(), Said.to("help", "map").out());
  }

  /** Somebody who has read the help of the program alone knows what to type. */
  @Test
  void helpHasALineToTypeForEveryCommand() {
    String help = Said.to("help").out();
    names()
        .filter(name -> !name.equals("completion"))
        .forEach(name -> assertTrue(help.contains(ConsoleCommand.program() + name + " "), help));
    assertTrue(help.lines().allMatch(line -> line.length() <= 100), help);
  }

  /** The line that says what is wrong must not scroll away. */
  @ParameterizedTest
  @CsvSource({"--packing,two", "--lows,10-20", "--nodes,1000", "--threads,none"})
  void aWrongOptionIsToldInTwoLines(String option, String value) {
    String file = "src/main/resources/stenotherm/examples/cold-night.yaml";
    Said wrong = Said.to("map", file, option, value);
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, wrong.code());
    List<String> lines = wrong.err().lines().toList();
    assertEquals(2, lines.size(), wrong.err());
    assertTrue(lines.get(0).contains(option), wrong.err());
    assertTrue(lines.get(1).matches("see .*map --help"), wrong.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "search --candidates many|'many' is not a whole number, write it in digits",
        "map --nodes 2.5|'2.5' is not a whole number",
        "compare --most-cells 99999999999999999999|is too large a number",
        "rank --error-per-day 3,5|'3,5' is not a number, write it in digits with a point",
        "replay --months 13|'13' is no month, write numbers from 1 to 12 or names",
        "replay --months ma|'ma' is no month"
      })
  void aWrongNumberIsToldWithWhatIsExpected(String line, String told) {
    Said wrong = Said.to((Object[]) line.split(" ", -1));
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, wrong.code());
    assertTrue(wrong.err().contains(told), wrong.err());
  }

  @ParameterizedTest
  @CsvSource({"march, MARCH", "Sept, SEPTEMBER", "03, MARCH", "12, DECEMBER"})
  void monthsHaveNumbersAndNames(String typed, Month month) {
    assertEquals(month, new ReplayDays.MonthName().convert(typed));
  }

  @Test
  void aFileThatIsNotThereIsToldWithItsFolder() {
    String here = Path.of("").toAbsolutePath().toString();
    assertEquals(
        "cannot read the scenario: there is no file missing.yaml in the folder " + here,
        Said.to("compare", "missing.yaml").err().strip());
    assertTrue(
        Said.to("compare", "nowhere/missing.yaml").err().contains("there is no folder " + here));
    assertTrue(Said.to("compare", "src").err().contains("src is a folder, name the file in it"));
    assertTrue(Said.to("new", "nowhere/my.yaml").err().contains("make it first"));
  }

  @Test
  void aCommandIsOneEvenWhereAFolderIsCalledLikeIt() {
    assertEquals("map", Stenotherm.withCommand(new String[] {"map"}, file -> true)[0]);
    assertEquals("compare", Stenotherm.withCommand(new String[] {"gecko"}, file -> true)[0]);
    assertEquals("gecko", Stenotherm.withCommand(new String[] {"gecko"}, file -> false)[0]);
  }

  /** As Ctrl-C does; the line on standard error is the last one. */
  @Test
  void aSignalStopsTheComputationWithALine(@TempDir Path folder) throws Exception {
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Stenotherm.class.getName(),
                "--mesh-scale",
                "2",
                "--out",
                folder.resolve("report").toString())
            .start();
    try (BufferedReader err = program.errorReader(StandardCharsets.UTF_8)) {
      String first = err.readLine();
      assertEquals("No file is named: the shipped example cold-night.yaml is taken.", first);
      while (first != null && !first.startsWith("First look")) {
        first = err.readLine();
      }
      assertTrue(first != null && first.startsWith("First look"), first);
      program.toHandle().destroy();
      String rest = err.lines().collect(Collectors.joining("\n"));
      assertTrue(rest.endsWith("computation ended early: stopped by an interrupt"), rest);
    }
    assertFalse(program.waitFor() == 0);
    assertFalse(Files.exists(folder.resolve("report")));
  }
}
