package stenotherm.transit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.base.Checks;
import stenotherm.base.Orientation;
import stenotherm.base.Provenance;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;

/** The cautions that go with every transit, whatever its result. */
final class TransitCautions {
  private TransitCautions() {}

  static List<String> of(
      Parcel parcel, Journey journey, List<Recorder.@Nullable FillDifference> differences) {
    Set<String> all = new LinkedHashSet<>(parcel.cautions());
    for (int number = 0; number < journey.legs().size(); number++) {
      Leg leg = journey.legs().get(number);
      Orientation orientation = leg.surroundings().orientation();
      if (orientation != Orientation.LID_UP) {
        all.add(
            "In '"
                + leg.name()
                + "' the parcel lies "
                + orientation.words()
                + ": everything in it is taken to stay in its place.");
      }
      if (leg.surroundings().hasSun()) {
        all.add(sun(leg.surroundings().sunshine().absorptance()));
      }
    }
    all.addAll(convection(parcel, journey, differences));
    return List.copyOf(all);
  }

  /** Of the legs in which the air in the fill may move, the one with the largest difference. */
  private static List<String> convection(
      Parcel parcel, Journey journey, List<Recorder.@Nullable FillDifference> differences) {
    int others = -1;
    double largest = 0;
    String where = "";
    List<String> warnings = List.of();
    for (int number = 0; number < journey.legs().size(); number++) {
      Recorder.FillDifference fill = differences.get(number);
      if (fill == null) {
        continue;
      }
      Leg leg = journey.legs().get(number);
      List<String> found =
          parcel.convectionWarnings(
              leg.surroundings().orientation(), fill.kelvin(), fill.meanTemperature());
      if (!found.isEmpty()) {
        others++;
        if (fill.kelvin() > largest) {
          largest = fill.kelvin();
          where = "In '" + leg.name() + "'";
          warnings = found;
        }
      }
    }
    String start =
        others <= 0
            ? where + ": "
            : where
                + ", and less in "
                + others
                + (others == 1 ? " other part: " : " other parts of the journey: ");
    return warnings.stream().map(warning -> start + warning).toList();
  }

  private static String sun(SolarAbsorptance absorptance) {
    boolean known =
        absorptance.source().provenance() == Provenance.READ
            || absorptance.source().provenance() == Provenance.DERIVED;
    return "The outside is taken to absorb this part of the sunlight: "
        + Checks.show(absorptance.nominal(), "")
        + ", "
        + Checks.show(absorptance.range().low(), "")
        + " to "
        + Checks.show(absorptance.range().high(), "")
        + (known ? "." : ", not measured for this parcel.");
  }
}
