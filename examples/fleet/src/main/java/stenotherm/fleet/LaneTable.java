package stenotherm.fleet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stenotherm.base.Suggestions;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.CsvTable;
import stenotherm.text.Faults;
import stenotherm.text.ScalarNode;
import stenotherm.text.TextFormatException;

/**
 * The lanes that were asked for, looked at before anything is computed.
 *
 * @param lanes the lanes in the order of their table, at least one
 * @param scenarios text of the scenario files, by the names that the lanes use
 * @param days days of sealing of each lane, by its name; at least one
 */
record LaneTable(
    List<Lane> lanes, Map<String, String> scenarios, Map<String, List<LocalDate>> days) {
  /** What a folder may be called on any file system. */
  private static final Pattern FOLDER = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._+-]{0,99}");

  LaneTable {
    lanes = List.copyOf(lanes);
    scenarios = Map.copyOf(scenarios);
    days = Map.copyOf(days);
  }

  /** The scenario of a lane. */
  Scenario scenario(String file) {
    return ScenarioReader.read(file, scenarios.getOrDefault(file, ""));
  }

  /**
   * Reads lanes.
   *
   * @param table the table
   * @param folder where the scenario files lie
   * @param wanted tells the days of sealing that are wanted
   * @throws TextFormatException if a column is missing or unknown, a name is not one or occurs
   *     twice, a place has no recorded weather, a scenario cannot be read or computed, or no day is
   *     left; with all faults of the table
   */
  static LaneTable read(CsvTable table, Path folder, Predicate<LocalDate> wanted) {
    return new Reader(folder, wanted).read(table);
  }

  private static final class Reader {
    private final Path folder;
    private final Predicate<LocalDate> wanted;
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Map<String, Scenario> scenarios = new HashMap<>();
    private final Set<String> refused = new HashSet<>();

    /** Lanes that differ in their names alone have the same days. */
    private final Map<Lane, List<LocalDate>> known = new HashMap<>();

    Reader(Path folder, Predicate<LocalDate> wanted) {
      this.folder = folder;
      this.wanted = wanted;
    }

    LaneTable read(CsvTable table) {
      Map<String, Integer> columns = columns(table);
      if (table.rows().isEmpty()) {
        throw table.header().get(0).fail("needs at least one lane below it");
      }
      Faults faults = new Faults();
      List<Lane> lanes = new ArrayList<>();
      Map<String, List<LocalDate>> days = new HashMap<>();
      Set<String> names = new HashSet<>();
      for (List<ScalarNode> row : table.rows()) {
        List<ScalarNode> values =
            Lane.COLUMNS.stream().map(column -> row.get(position(columns, column))).toList();
        faults.attempt(() -> name(values.get(0), names));
        Optional<Scenario> scenario = faults.attempt(() -> scenario(values.get(1)));
        scenario
            .flatMap(asked -> faults.attempt(() -> days(asked, values)))
            .ifPresent(
                found -> {
                  Lane lane = lane(values);
                  lanes.add(lane);
                  days.put(lane.name(), found);
                });
      }
      faults.throwIfAny();
      return new LaneTable(lanes, texts, days);
    }

    private static int position(Map<String, Integer> columns, String column) {
      return columns.getOrDefault(column, -1);
    }

    private static Map<String, Integer> columns(CsvTable table) {
      Map<String, String> known = new LinkedHashMap<>();
      Lane.COLUMNS.forEach(column -> known.put(column, column));
      Map<String, Integer> columns = new LinkedHashMap<>();
      Faults faults = new Faults();
      for (int number = 0; number < table.header().size(); number++) {
        ScalarNode head = table.header().get(number);
        int position = number;
        faults
            .attempt(() -> head.choice(known))
            .ifPresent(
                column -> {
                  if (columns.put(column, position) != null) {
                    faults.add(head.fail("is a column twice"));
                  }
                });
      }
      // a misspelt column is told by its own name alone
      faults.throwIfAny();
      for (String column : Lane.COLUMNS) {
        if (!columns.containsKey(column)) {
          faults.add(
              table
                  .header()
                  .get(0)
                  .fail(
                      "needs a column '"
                          + column
                          + "' beside it; all are "
                          + String.join(", ", Lane.COLUMNS)));
        }
      }
      faults.throwIfAny();
      return columns;
    }

    private static String name(ScalarNode node, Set<String> earlier) {
      String name = node.text();
      if (!FOLDER.matcher(name).matches()) {
        throw node.fail(
            "must begin with a letter or digit and have at most 100 letters, digits, blanks or"
                + " . _ + -: a folder is named after it");
      }
      if (!earlier.add(name)) {
        throw node.fail("an earlier lane has the same name, give each its own");
      }
      return name;
    }

    private static Lane lane(List<ScalarNode> values) {
      return new Lane(
          values.get(0).text(), values.get(1).text(), values.get(2).text(), values.get(3).text());
    }

    private Scenario scenario(ScalarNode node) {
      String file = node.text();
      Scenario known = scenarios.get(file);
      if (known != null) {
        return known;
      }
      if (refused.contains(file)) {
        throw node.fail("is the scenario with the faults that are told for an earlier lane");
      }
      refused.add(file);
      String text = text(node, file);
      Scenario scenario = ScenarioReader.read(file, text);
      texts.put(file, text);
      scenarios.put(file, scenario);
      return scenario;
    }

    private String text(ScalarNode node, String file) {
      try {
        return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
      } catch (NoSuchFileException missing) {
        throw node.fail("there is no such file in " + folder + nearby(node));
      } catch (IOException problem) {
        throw node.fail("cannot be read: " + problem.getMessage());
      }
    }

    /** Which scenario file of the same folder may be meant. */
    private String nearby(ScalarNode node) {
      Path meant = folder.resolve(node.text());
      Path beside = meant.getParent();
      Map<String, String> names = new TreeMap<>();
      if (beside != null) {
        try (Stream<Path> files = Files.list(beside)) {
          files
              .map(file -> String.valueOf(file.getFileName()))
              .filter(name -> name.endsWith(".yaml"))
              .forEach(name -> names.put(name, name));
        } catch (IOException noFolder) {
          return "";
        }
      }
      return Suggestions.closest(String.valueOf(meant.getFileName()), names.keySet())
          .map(name -> ". Did you mean '" + name + "'?")
          .orElse("");
    }

    private List<LocalDate> days(Scenario asked, List<ScalarNode> values) {
      ScalarNode origin = values.get(2);
      ScalarNode destination = values.get(3);
      Lane alike = new Lane("", values.get(1).text(), origin.text(), destination.text());
      List<LocalDate> found = known.get(alike);
      if (found == null) {
        found =
            Lane.journeys(asked, origin, destination, wanted).stream()
                .map(journey -> journey.sealing().toLocalDate())
                .toList();
        known.put(alike, found);
      }
      if (found.isEmpty()) {
        throw origin.fail(
            "none of the recorded days from which the journey can be followed is among those asked"
                + " for");
      }
      return found;
    }
  }
}
