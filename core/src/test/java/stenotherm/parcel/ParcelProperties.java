package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import stenotherm.base.Face;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;
import stenotherm.material.Materials;

/** What a packed parcel must keep, whatever its walls and wherever its warmers are. */
class ParcelProperties {
  private static final MeshControl MESH = MeshControl.graded(0.05, 0.04);
  private static final double AIR = 273.15;

  /** Long enough for a steady state: time constants are hours [s]. */
  private static final double LONG = 3e6;

  private static Parcel foamed(double thickness) {
    Walls walls = Walls.uniform(List.of(new WallLayer(Materials.EPS_20, thickness)));
    return new Parcel(
        "foam",
        walls.around(new Dimensions(0.24, 0.18, 0.14)),
        walls,
        Materials.SHREDDED_PAPER,
        List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
        List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
  }

  private static double[] steady(Parcel parcel, List<Probe> probes, double... powers) {
    HeatNetwork network = parcel.network(MESH);
    HeatEngine engine = Runs.engine(parcel, network, probes, AIR);
    double[] inputs = new double[1 + powers.length];
    inputs[0] = AIR;
    System.arraycopy(powers, 0, inputs, 1, powers.length);
    Runs.advance(engine, network, LONG, inputs);
    return Runs.read(engine);
  }

  /** For the same power a parcel in thicker foam is warmer: it loses less for each kelvin. */
  @Property(seed = "4201", tries = 8)
  void thickerFoamNeverRaisesTheLoss(
      @ForAll @DoubleRange(min = 0.01, max = 0.06) double one,
      @ForAll @DoubleRange(min = 0.01, max = 0.06) double other) {
    double thin = Math.min(one, other);
    double thick = Math.max(one, other);
    List<Probe> probes = List.of(new Probe.Mean("animal", "cup animal"));
    double inThin = steady(foamed(thin), probes, 1)[0];
    double inThick = steady(foamed(thick), probes, 1)[0];
    // the grids differ with the thickness: 0.05 K of some 8 K
    assertTrue(inThick >= inThin - 0.05, inThin + " and " + inThick);
  }

  /** What a watt at one place warms at another, a watt there warms here. */
  @Property(seed = "4202", tries = 6)
  void warmersAnswerEachOtherAlike(
      @ForAll @DoubleRange(min = -0.05, max = 0.05) double alongX,
      @ForAll @DoubleRange(min = -0.04, max = 0.04) double alongY,
      @ForAll Face face) {
    if (face == Face.Z_MIN) {
      return;
    }
    PlacedWarmer fixed =
        new PlacedWarmer(
            "loose",
            Packings.steady(1),
            new Placement.InCavity(
                new Position(alongX / 2, alongY / 2, 0.07), stenotherm.base.Axis.Z),
            0);
    PlacedWarmer other =
        new PlacedWarmer(
            "mounted",
            Packings.steady(1),
            new Placement.OnFace(
                face, alongX / 4, face == Face.Z_MAX ? alongY : 0.02, Mounting.standingOff(0.004)),
            0);
    Walls jointed =
        Packings.WALLS.with(new Joints(List.of(stenotherm.base.Axis.values()), 1, 0.001));
    Parcel parcel =
        new Parcel(
            "two",
            Packings.OUTER,
            jointed,
            Materials.SHREDDED_PAPER,
            List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
            List.of(fixed, other));
    List<Probe> probes =
        List.of(new Probe.Mean("loose", "loose"), new Probe.Mean("mounted", "mounted"));
    double there = steady(parcel, probes, 1, 0)[1] - AIR;
    double here = steady(parcel, probes, 0, 1)[0] - AIR;
    // a mean takes the field as curved within a cell, which so coarse a grid knows roughly
    assertEquals(there, here, 5e-3 * here);
    assertTrue(here > 0.1);
  }
}
