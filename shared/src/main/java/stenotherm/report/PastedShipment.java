package stenotherm.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.decision.Remedy;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.warmer.Warmers;

/**
 * A changed packing and its journey as a scenario file has them, to paste.
 *
 * @param packing the packing; empty if it stays as it is
 * @param journey what to write under the journey; empty if it stays
 */
record PastedShipment(String packing, String journey) {
  static final String UNDER_JOURNEY = "To change under journey";
  static final String UNDER_PACKINGS = "To paste under packings";

  /** What is said before a change that was judged only roughly. */
  static final String TO_COMPUTE =
      "What helps most was computed on fewer journeys and a coarser grid. To have it judged like the"
          + " others, change the scenario:";

  /** What is said where it cannot be written. */
  static final String BY_HAND =
      "What helps most was computed on fewer journeys and a coarser grid. To have it judged like the"
          + " others, change the scenario by hand: a warmer or a panel is not as the catalogue has"
          + " it.";

  /**
   * Writes a shipment.
   *
   * @param name the name that the packing gets
   * @param box its carton as a file has it
   * @param like the packing whose containers it has
   * @param before the journey of the scenario
   */
  static PastedShipment of(
      String name,
      String box,
      Remedy.Shipment shipment,
      List<Remedy> changes,
      Parcel like,
      Journey before) {
    String packing =
        PackingBlock.of(name, box, shipment.parcel())
            + "    # with the cup or the containers, and what was measured, of '"
            + like.name()
            + "', if it has its own\n";
    return new PastedShipment(packing, journey(shipment.journey(), changes, before));
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
      return Optional.of(new PastedShipment("", journey(after.journey(), change.parts(), journey)));
    }
    boolean isNamed =
        changed.warmers().stream().allMatch(each -> Warmers.all().contains(each.warmer()))
            && Arrays.stream(Face.values())
                .flatMap(face -> changed.walls().layersOf(face).stream())
                .noneMatch(layer -> layer.material().name().contains(","));
    String carton = scenario.cartons().get(parcel.name());
    boolean isResized = !changed.outer().equals(parcel.outer());
    return Optional.of(
            of(
                parcel.name() + ", changed",
                carton == null || isResized ? size(changed) : carton,
                after,
                change.parts(),
                parcel,
                journey))
        .filter(any -> isNamed);
  }

  /** What a change brings with it that was not there before. */
  static List<String> newCautions(Remedy change, Parcel parcel, Journey journey) {
    List<String> before = parcel.cautions();
    return change.applyTo(parcel, journey).parcel().cautions().stream()
        .filter(caution -> !before.contains(caution))
        .toList();
  }

  private static String size(Parcel parcel) {
    return PackingBlock.number(Lengths.toMillimetres(parcel.outer().size(Axis.X)))
        + " x "
        + PackingBlock.number(Lengths.toMillimetres(parcel.outer().size(Axis.Y)))
        + " x "
        + PackingBlock.number(Lengths.toMillimetres(parcel.outer().size(Axis.Z)))
        + " mm";
  }

  private static String journey(Journey after, List<Remedy> changes, Journey before) {
    StringBuilder block = new StringBuilder();
    if (after.startTemperature() != before.startTemperature()) {
      block
          .append("  start: ")
          .append(PackingBlock.temperature(after.startTemperature()))
          .append('\n');
    }
    for (Remedy change : changes) {
      if (change instanceof Remedy.HandedOver handed) {
        block.append("  # leave the leg '").append(handed.leg()).append("' out\n");
      }
    }
    return block.toString();
  }
}
