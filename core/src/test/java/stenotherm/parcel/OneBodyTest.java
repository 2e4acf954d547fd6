package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Source;
import stenotherm.material.Materials;

class OneBodyTest {
  private static final Dimensions SIZE = new Dimensions(0.12, 0.1, 0.02);
  private static final double MASS = 0.22;

  private static PlacedPack gel(PackStart start) {
    PackClass pack =
        new PackClass("gel", Materials.GEL_PACK, SIZE, MASS, 0, Source.assumed("made up"));
    return new PlacedPack("pack", pack, Placement.onFace(Face.Z_MAX, Mounting.taped()), start);
  }

  private static OneBody body(PackStart start) {
    return gel(start).asOneBody().oneBody().orElseThrow();
  }

  @Test
  void onlyWhatMeltsAsOneBodyIsOne() {
    PackStart frozen = new PackStart.AtTemperature(258);
    assertTrue(gel(frozen).oneBody().isEmpty());
    PlacedPack one = gel(frozen).asOneBody();
    assertTrue(one.pack().melts());
    assertEquals(one, one.asOneBody());
    PackClass water = new PackClass("w", Materials.WATER, SIZE, MASS, 0, Source.assumed("made up"));
    PlacedPack liquid =
        new PlacedPack("w", water, Placement.onFace(Face.Z_MAX, Mounting.taped()), frozen);
    assertEquals(liquid, liquid.asOneBody());
  }

  @Test
  void itStartsAsItsPackDoes() {
    OneBody frozen = body(new PackStart.AtTemperature(258));
    assertEquals(258, frozen.temperature(frozen.atSealing(), 0), 1e-9);
    assertEquals(0, frozen.liquidFraction(frozen.atSealing(), 5));
    OneBody partly = body(new PackStart.PartlyMelted(0.25));
    assertEquals(0.25, partly.liquidFraction(partly.atSealing(), 0), 1e-12);
  }

  /** A front in a slab: half molten, the heat passes half of the thickness on its way. */
  @Test
  void heatThatPassesWhatHasMeltedRaisesTheMean() {
    OneBody body = body(new PackStart.PartlyMelted(0.5));
    double still = body.temperature(body.atSealing(), 0);
    double watts = 2;
    double fraction = body.liquidFraction(body.atSealing(), watts);
    double conductivity =
        Materials.GEL_PACK.behaviour().phaseChange().orElseThrow().liquidConductivity();
    double slab = watts * SIZE.height() / (conductivity * SIZE.length() * SIZE.width());
    double rise = body.temperature(body.atSealing(), watts) - still;
    double square = fraction * fraction;
    assertTrue(rise > slab * square / 8 && rise < slab * square / 2, "rise " + rise);
    assertTrue(fraction < 0.5 && fraction > 0.48, "fraction " + fraction);
    assertTrue(body.temperature(body.atSealing(), -watts) < still);
  }

  /** Where it is all molten, or all frozen, nothing jumps. */
  @Test
  void theTemperatureRisesWithoutJumps() {
    OneBody body = body(new PackStart.AtTemperature(258));
    double step = body.curve().latent() / 4000;
    for (double watts : new double[] {-6, -0.5, 0, 0.5, 6}) {
      double last = body.temperature(body.curve().enthalpy(265), watts);
      for (double heat = step; heat < 1.4 * body.curve().latent(); heat += step) {
        double now = body.temperature(body.curve().enthalpy(265) + heat, watts);
        assertTrue(now >= last - 1e-9 && now - last < 0.2, "at " + heat + " J: " + (now - last));
        last = now;
      }
    }
  }
}
