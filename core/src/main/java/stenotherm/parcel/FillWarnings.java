package stenotherm.parcel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stenotherm.base.Lengths;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.material.FillConvection;
import stenotherm.material.Material;

/** Tells whether the air in a fill may move; see {@link Parcel#convectionWarnings}. */
final class FillWarnings {
  private FillWarnings() {}

  static List<String> of(
      Parcel parcel, Orientation orientation, double difference, double meanTemperature) {
    Optional<Material> filling = parcel.filling().fill();
    if (difference <= 0 || filling.isEmpty()) {
      return List.of();
    }
    Material fill = filling.get();
    double height = parcel.cavity().size(orientation.up().axis());
    String what = "The " + fill.name() + " is warmer below than above: ";
    String where =
        String.format(
            Locale.ROOT, " (%.1f K over %.0f mm", difference, Lengths.toMillimetres(height));
    Optional<FillConvection> known = FillConvection.of(fill);
    if (known.isEmpty()) {
      return List.of(
          what + "whether its air moves is not known, as its voids are not stated" + where + ").");
    }
    FillConvection air = known.get();
    List<String> warnings = new ArrayList<>();
    Range seeping = air.darcyRayleigh(height, difference, meanTemperature);
    if (seeping.high() > FillConvection.CRITICAL_DARCY_RAYLEIGH) {
      boolean surely = seeping.low() > FillConvection.CRITICAL_DARCY_RAYLEIGH;
      warnings.add(
          what
              + String.format(
                  Locale.ROOT,
                  "air %s seep through it in circles and carry more heat than computed%s;"
                      + " Darcy-Rayleigh number %.3g to %.3g, critical %.3g).",
                  surely ? "will" : "may",
                  where,
                  seeping.low(),
                  seeping.high(),
                  FillConvection.CRITICAL_DARCY_RAYLEIGH));
    }
    double inVoids = air.voidRayleigh(height, difference, meanTemperature);
    if (inVoids > FillConvection.CRITICAL_RAYLEIGH) {
      warnings.add(
          what
              + String.format(
                  Locale.ROOT,
                  "the air in its voids will turn over and carry more heat than computed%s; voids of"
                      + " %.0f mm, Rayleigh number %.3g, critical %.0f).",
                  where,
                  Lengths.toMillimetres(air.voidSize()),
                  inVoids,
                  FillConvection.CRITICAL_RAYLEIGH));
    }
    return List.copyOf(warnings);
  }
}
