package stenotherm.parcel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.base.Provenance;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.grid.Box;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * A vacuum panel with its edge: the envelope carries heat around the core, so that a small panel
 * insulates less than its centre. The whole panel gets the effective conductivity k = k_centre +
 * psi d P / A, with the edge transmittance psi, the thickness d, the perimeter P and the area A.
 *
 * <p>The lower end of the range is a new panel, the upper end a punctured one. Limits: psi is that
 * of panels of about 20 mm; what lies beside and around the panel changes it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name of the kind of panel
 * @param edgeTransmittance edge transmittance psi [W/(m K)], 0 or above
 * @param source where it comes from
 */
public record VacuumPanel(String name, double edgeTransmittance, Source source) {
  private static final String LAW =
      "Ghazi Wakili, Bundi and Binder 2004, Building Research and Information 32:293-299";

  /** Envelope of films with thin layers of evaporated metal. */
  public static final VacuumPanel METALLISED_FILM =
      new VacuumPanel(
          "vacuum panel in metallised film",
          0.008,
          Source.memory(
              LAW, "law, and edge transmittance of about 0.007 to 0.009 W/(m K) at 20 mm"));

  /** Envelope with a foil of aluminium, tighter, but its edge carries more heat. */
  public static final VacuumPanel ALUMINIUM_FOIL =
      new VacuumPanel(
          "vacuum panel in aluminium foil",
          0.04,
          Source.memory(LAW, "law, and order of magnitude of the edge transmittance of foil"));

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank or the edge transmittance
   *     negative
   */
  public VacuumPanel {
    Checks.given("name", name);
    Checks.given("source", source);
    Checks.name("name of a vacuum panel", name);
    Checks.notNegative("edge transmittance of a vacuum panel", edgeTransmittance, "W/(m K)");
  }

  /**
   * A panel of one size as a layer of a wall.
   *
   * @param length longer side [m], above 0
   * @param width shorter side [m], above 0
   * @param thickness thickness [m], above 0
   * @return the layer
   * @throws stenotherm.base.InvalidInputException if a number is not above 0
   */
  public WallLayer layer(double length, double width, double thickness) {
    Checks.positive("length of a vacuum panel", length, "m");
    Checks.positive("width of a vacuum panel", width, "m");
    Checks.positive("thickness of a vacuum panel", thickness, "m");
    double edge = edgeTransmittance * thickness * 2 * (length + width) / (length * width);
    Material centre = Materials.VACUUM_PANEL_CENTRE;
    Material punctured = Materials.VACUUM_PANEL_PUNCTURED;
    Material whole =
        new Material(
            String.format(
                Locale.ROOT,
                "%s, %.0f x %.0f mm",
                name,
                Lengths.toMillimetres(length),
                Lengths.toMillimetres(width)),
            centre.conductivity() + edge,
            new Range(centre.conductivity() + edge, punctured.conductivity() + edge),
            centre.density(),
            centre.specificHeat(),
            new Source(
                centre.source().work() + "; " + source.work(),
                source.locator() + "; " + centre.source().locator(),
                Provenance.MEMORY));
    return new WallLayer(whole, thickness);
  }

  /**
   * Walls of a box that six panels line, lid and floor over the sides.
   *
   * @param outer outer box [m]
   * @param outside layers outside the panels, outermost first; may be empty
   * @param thickness thickness of all panels [m], above 0
   * @return the walls
   * @throws stenotherm.base.InvalidInputException if the panels leave no room inside
   */
  public Walls lining(Box outer, List<WallLayer> outside, double thickness) {
    double cover = outside.stream().mapToDouble(WallLayer::thickness).sum();
    Map<Face, List<WallLayer>> layers = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      double[] sides = new double[2];
      int count = 0;
      for (Axis axis : Axis.values()) {
        if (axis != face.axis()) {
          double taken = Joints.NONE.covers(face.axis(), axis) ? 0 : 2 * thickness;
          sides[count++] = outer.size(axis) - 2 * cover - taken;
        }
      }
      List<WallLayer> all = new ArrayList<>(outside);
      all.add(layer(Math.max(sides[0], sides[1]), Math.min(sides[0], sides[1]), thickness));
      layers.put(face, all);
    }
    return new Walls(layers);
  }
}
