package stenotherm.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.decision.Remedy;
import stenotherm.journey.Journey;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.LidHoles;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.text.ScalarText;
import stenotherm.warmer.Warmers;
import stenotherm.words.Units;

/**
 * A changed packing and its journey as a scenario file has them, to paste.
 *
 * @param packing the packing; empty if it stays as it is
 * @param journey what to write under the journey; empty if it stays
 */
record PastedShipment(String packing, String journey) {
  static final String UNDER_JOURNEY = "To change under journey";
  static final String UNDER_PACKINGS = "To paste under packings";

  /** A journey on one line has no room for more keys. */
  private static final String SPELLED_OUT =
      "  # a journey on one line must be spelled out for it: template: ..., lows/highs: ...\n";

  private static final String CARTON = " carton";

  /** A carton of so many times the volume is another packing: assumed. */
  private static final double MUCH = 1.5;

  private static final Pattern CHANGED = Pattern.compile("(.*), changed(?: ([0-9]{1,3}))?");

  private static final String ROUGHLY =
      "What helps most was computed on a coarser grid, mostly on fewer journeys. To have it judged"
          + " like the others, change the scenario";

  /** What is said before a change that was judged only roughly. */
  static final String TO_COMPUTE = ROUGHLY + ":";

  /** What is said where it cannot be written. */
  static final String BY_HAND =
      ROUGHLY + " by hand: a warmer or a panel is not as the catalogue has it.";

  /**
   * Writes a shipment.
   *
   * @param name the name that the packing gets
   * @param box its carton as a file has it
   * @param like the packing whose containers it has
   */
  static PastedShipment of(
      String name,
      String box,
      Remedy.Shipment shipment,
      List<Remedy> changes,
      Parcel like,
      Scenario scenario) {
    StringBuilder packing = new StringBuilder();
    packing.append(PackingBlock.of(name, box, shipment.parcel(), scenario.units()));
    Scenario.Spelling spelling = scenario.spelling(like);
    boolean areHoled = changes.stream().anyMatch(each -> each instanceof Remedy.HolesInLids);
    if (spelling.ownContainers() && !areHoled) {
      packing
          .append("    containers: ")
          .append(ScalarText.quoted("as in " + like.name()))
          .append('\n');
    }
    if (areHoled) {
      packing
          .append("    # with the containers, in each cup or vial that has less, holes: ")
          .append(LidHoles.USUAL.count())
          .append(" x ")
          .append(PackingBlock.size(scenario.units(), LidHoles.USUAL.diameter()))
          .append('\n');
    }
    if (spelling.measured()) {
      packing.append("    # with what was measured of '").append(like.name()).append("'\n");
    }
    return new PastedShipment(packing.toString(), journey(shipment.journey(), changes, scenario));
  }

  private PastedShipment noting(String note) {
    return new PastedShipment(packing + "    # " + note + '\n', journey);
  }

  /**
   * Writes a change of a packing; empty if a file needs more than names for its parts: a warmer
   * that is not as the catalogue has it, a panel that is made to measure.
   */
  static Optional<PastedShipment> of(
      Remedy change, Parcel parcel, Journey journey, Scenario scenario) {
    Remedy.Shipment after = change.applyTo(parcel, journey);
    Parcel changed = after.parcel();
    if (changed.equals(parcel)) {
      return Optional.of(
          new PastedShipment("", journey(after.journey(), change.parts(), scenario)));
    }
    boolean isNamed =
        changed.warmers().stream().allMatch(each -> Warmers.all().contains(each.warmer()))
            && Arrays.stream(Face.values())
                .flatMap(face -> changed.walls().layersOf(face).stream())
                .noneMatch(layer -> layer.material().name().contains(","));
    if (!isNamed) {
      return Optional.empty();
    }
    Optional<String> carton = scenario.carton(parcel);
    boolean isResized = !changed.outer().equals(parcel.outer());
    String box =
        carton
            .filter(as -> !isResized)
            .orElseGet(() -> size(changed, scenario.units(), carton.isPresent()));
    PastedShipment pasted =
        of(changed(parcel.name()), box, after, change.parts(), parcel, scenario);
    return Optional.of(
        soldCarton(changed, scenario.units())
            .filter(as -> carton.isPresent() && isResized && !box.equals(as))
            .map(sold -> pasted.noting("the next larger carton that is sold: " + sold))
            .orElse(pasted));
  }

  /** What a change brings with it that was not there before. */
  static List<String> newCautions(Remedy change, Parcel parcel, Journey journey) {
    List<String> before = parcel.cautions();
    return change.applyTo(parcel, journey).parcel().cautions().stream()
        .filter(caution -> !before.contains(caution))
        .toList();
  }

  /** A name that tells the packing from the one that it comes from, itself perhaps changed. */
  private static String changed(String name) {
    Matcher before = CHANGED.matcher(name);
    if (!before.matches()) {
      return name + ", changed";
    }
    int times = before.group(2) == null ? 1 : Integer.parseInt(before.group(2));
    return before.group(1) + ", changed " + (times + 1);
  }

  /** The outer size; of a carton, which is bought by its inner one, what its board surrounds. */
  private static String size(Parcel parcel, Units units, boolean isCarton) {
    return isCarton
        ? PackingBlock.size(units, inner(parcel)) + CARTON
        : PackingBlock.size(
            units, Arrays.stream(Axis.values()).mapToDouble(parcel.outer()::size).toArray());
  }

  /** The inner extents of a carton, which its board surrounds [m]. */
  private static double[] inner(Parcel parcel) {
    double[] size = Arrays.stream(Axis.values()).mapToDouble(parcel.outer()::size).toArray();
    for (Face face : Face.values()) {
      size[face.axis().ordinal()] -= parcel.walls().layersOf(face).get(0).thickness();
    }
    return size;
  }

  /** The next larger carton that is sold, where that is not much larger. */
  private static Optional<String> soldCarton(Parcel parcel, Units units) {
    double[] inner = inner(parcel);
    List<BoxSize> sold = units == Units.US ? BoxSizes.all() : BoxSizes.metric();
    return sold.stream()
        .filter(size -> size.name().endsWith(CARTON))
        .filter(
            size ->
                size.inside().length() >= inner[0] - PackingBlock.ROUND_OFF
                    && size.inside().width() >= inner[1] - PackingBlock.ROUND_OFF
                    && size.inside().height() >= inner[2] - PackingBlock.ROUND_OFF)
        .min(Comparator.comparingDouble(size -> size.inside().volume()))
        .filter(size -> size.inside().volume() < MUCH * inner[0] * inner[1] * inner[2])
        .map(size -> size.name());
  }

  private static String journey(Journey after, List<Remedy> changes, Scenario scenario) {
    StringBuilder block = new StringBuilder();
    if (after.startTemperature() != scenario.journey().startTemperature()) {
      block
          .append("  start: ")
          .append(PackingBlock.temperature(after.startTemperature(), scenario.units()))
          .append('\n');
    }
    for (Remedy change : changes) {
      List<String> without =
          change instanceof Remedy.HandedOver handed
              ? List.of(handed.leg())
              : change instanceof Remedy.Fetched fetched ? fetched.without() : List.of();
      if (!without.isEmpty()) {
        String legs = without.stream().map(ScalarText::quoted).collect(Collectors.joining(", "));
        block.append("  without: ").append(without.size() == 1 ? legs : "[" + legs + "]");
        block.append('\n');
      }
    }
    if (!block.isEmpty()) {
      block.append(SPELLED_OUT);
    }
    return block.toString();
  }
}
