package stenotherm.scenario;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.material.Material;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.text.ScalarNode;

/** Puts what loggers told into a packing. */
final class MeasuredReader {
  static final String FILL = "fill conductivity";
  static final String FOAM = "foam conductivity";
  static final String SEAMS = "seam gap";
  static final String WARMER = "warmer strength";

  private static final Source SOURCE =
      Source.derived("The user's own test with loggers", "value and range as the file gives them");

  private static final Pattern VALUE =
      Pattern.compile("([^\\s()]+)\\s*\\(\\s*(\\S+)\\s+to\\s+([^\\s()]+)\\s*\\)\\s*(.*)");

  private final KeyedSection section;

  MeasuredReader(KeyedSection section) {
    this.section = section;
  }

  /** A value and the range that holds it with 90 %. */
  private record Told(ScalarNode node, double value, Range range) {}

  private Optional<Told> told(String key, ToDoubleFunction<ScalarNode> reader) {
    return section
        .optional(key)
        .map(
            given -> {
              ScalarNode node = given.asScalar();
              Matcher parts = VALUE.matcher(node.text());
              if (!parts.matches()) {
                throw node.fail(
                    "must be a value and its range, write for example "
                        + Vocabulary.MEASURED.key(key).form().example());
              }
              double[] values = new double[3];
              for (int part = 0; part < values.length; part++) {
                String text = (parts.group(part + 1) + " " + parts.group(4)).strip();
                values[part] = reader.applyAsDouble(node.piece(text));
              }
              if (!(values[1] <= values[0] && values[0] <= values[2])) {
                throw node.fail("must have the value within its range, the lower end first");
              }
              return new Told(node, values[0], new Range(values[1], values[2]));
            });
  }

  Parcel applied(Parcel stated) {
    Parcel parcel = stated;
    Optional<Told> fill = told(FILL, ScalarNode::conductivity);
    if (fill.isPresent()) {
      Material loose =
          parcel
              .filling()
              .fill()
              .orElseThrow(() -> fill.get().node().fail("has no effect without a fill"));
      parcel = parcel.withFilling(new Filling.Loose(measured(loose, fill.get())));
    }
    Optional<Told> foam = told(FOAM, ScalarNode::conductivity);
    if (foam.isPresent()) {
      Material wall = parcel.walls().insulation().material();
      parcel = parcel.withWalls(parcel.walls().replacing(measured(wall, foam.get())));
    }
    Optional<Told> seams = told(SEAMS, ScalarNode::length);
    if (seams.isPresent()) {
      parcel = parcel.withOpenings(openings(seams.get(), parcel.openings()));
    }
    Optional<Told> warmer = told(WARMER, ScalarNode::number);
    if (warmer.isPresent()) {
      if (parcel.warmers().isEmpty()) {
        throw warmer.get().node().fail("has no effect without a warmer");
      }
      parcel = parcel.withWarmers(warmers(warmer.get(), parcel.warmers()));
    }
    return parcel;
  }

  private static Material measured(Material material, Told told) {
    return told.node().locate(() -> material.measured(told.value(), told.range(), SOURCE));
  }

  private static Openings openings(Told told, Openings stated) {
    return told.node()
        .locate(
            () -> {
              double gap = told.value();
              if (!(gap > 0 && told.range().low() > 0)) {
                throw new InvalidInputException(
                    SEAMS, "must be above 0, for taped seams write seams: taped");
              }
              return new Openings(
                  gap,
                  stated.vents(),
                  new Range(told.range().low() / gap, told.range().high() / gap));
            });
  }

  private static List<PlacedWarmer> warmers(Told told, List<PlacedWarmer> stated) {
    return told.node()
        .locate(
            () ->
                stated.stream()
                    .map(each -> each.with(each.warmer().measured(told.value(), told.range())))
                    .toList());
  }
}
