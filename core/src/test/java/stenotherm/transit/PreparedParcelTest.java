package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.Placement;

class PreparedParcelTest {
  private static final MeshControl MESH = MeshControl.graded(0.04, 0.02);
  private static final TransitSettings SETTINGS =
      new TransitSettings(MESH, Times.HOUR / 2, IntegratorSettings.standard());

  private static Journey journey(double hours) {
    List<Leg> legs = List.of(leg("dock", hours, 272), leg("hall", 4, 285));
    return new Journey(LocalDateTime.of(2026, 1, 5, 18, 0), 294, legs);
  }

  private static Leg leg(String name, double hours, double ambient) {
    return new Leg(
        name,
        new Place("here", ZoneOffset.UTC),
        Times.fromHours(hours),
        Ambient.constant(ambient),
        1,
        FaceFilms.indoors(),
        Source.assumed("made up"));
  }

  private static TransitResult run(PreparedParcel prepared, Variation variation) {
    return run(prepared, variation, SETTINGS);
  }

  private static TransitResult run(
      PreparedParcel prepared, Variation variation, TransitSettings settings) {
    return prepared.run(journey(7), variation, settings, ProgressListener.NONE);
  }

  /** A model that has met other runs knows more, and no less. */
  @Test
  void runsAfterOthersAreTheSame() {
    PreparedParcel prepared = new PreparedParcel(Packings.plain());
    run(prepared, Variation.NOMINAL);
    for (Factor factor : List.of(Factor.WALL_CONDUCTIVITY, Factor.SURFACE_FILM, Factor.AMBIENT)) {
      Variation variation = Variation.NOMINAL.with(factor, End.HIGH);
      double[] alone = run(new PreparedParcel(Packings.plain()), variation).mean("cup");
      // for walls the nominal grid, which here is that of the varied parcel as well
      assertArrayEquals(alone, run(prepared, variation).mean("cup"), 0.02, factor.words());
    }
  }

  @Test
  void sameOrderGivesTheSameBitsForAnyNumberOfThreads() {
    double[][] means = new double[2][];
    for (int time = 0; time < 2; time++) {
      TransitSettings settings = SETTINGS.withThreads(1 + 2 * time);
      PreparedParcel prepared = new PreparedParcel(Packings.plain());
      run(prepared, Variation.NOMINAL.with(Factor.FILL_CONDUCTIVITY, End.LOW), settings);
      means[time] = run(prepared, Variation.NOMINAL, settings).mean("cup");
    }
    assertArrayEquals(means[0], means[1], 0);
  }

  /** Every cell under the coefficients that the reduced run found. */
  @Test
  void fullSolverHasTheSameCoefficients() {
    PreparedParcel prepared = new PreparedParcel(Packings.plain());
    TransitResult reduced = run(prepared, Variation.NOMINAL);
    TransitSettings tight =
        new TransitSettings(MESH, Times.HOUR / 2, IntegratorSettings.adaptive(2e-4)).full();
    TransitResult full = Transit.run(Packings.plain(), journey(7), Variation.NOMINAL, tight);
    assertEquals(reduced.coefficients(), full.coefficients());
    assertEquals(reduced.coefficientChange(), full.coefficientChange());
    assertTrue(reduced.coefficientChange().orElseThrow() < 0.01);
    assertTrue(reduced.reduction().isPresent());
    assertFalse(full.reduction().isPresent());
    assertEquals(0, full.reductionErrorOfColdest("cup"));
    assertTrue(reduced.reductionErrorOfColdest("cup") > 0);
    assertTrue(reduced.engine().startsWith("reduced model, "), reduced.engine());
    assertTrue(full.engine().matches("full solver, [0-9,]+ cells"), full.engine());
    // the figures of the design
    assertArrayEquals(full.mean("cup"), reduced.mean("cup"), 0.02);
    assertArrayEquals(full.coldest("cup"), reduced.coldest("cup"), 0.05);
    assertTrue(full.ledger().closes() && reduced.ledger().closes());
  }

  /** Coefficients at the means of seven hours are closer to live ones than to none. */
  @Test
  void freezingIsWorthLittle() {
    double[] frozen = run(new PreparedParcel(Packings.plain()), Variation.NOMINAL).mean("cup");
    TransitResult live =
        Transit.run(Packings.plain(), journey(7), Variation.NOMINAL, SETTINGS.live());
    assertTrue(live.coefficientChange().isEmpty());
    assertTrue(live.engine().endsWith(" cells: coefficients follow the temperatures"));
    // of a fall of 22 K
    assertArrayEquals(live.mean("cup"), frozen, 0.3);
  }

  /** What happens before a delay does not depend on it. */
  @Test
  void delayChangesNothingBeforeIt() {
    PreparedParcel prepared = new PreparedParcel(Packings.plain());
    Journey delayed = journey(7).delayed(0, Times.fromHours(5));
    double[] planned = run(prepared, Variation.NOMINAL).mean("cup");
    double[] later =
        prepared.run(delayed, Variation.NOMINAL, SETTINGS, ProgressListener.NONE).mean("cup");
    for (int row = 0; row <= 14; row++) {
      // coefficients of both are found within 0.2 %
      assertEquals(planned[row], later[row], 0.02);
    }
    assertTrue(later[later.length - 1] < planned[planned.length - 1]);
  }

  @Test
  void meltingPackNamesItsReason() {
    Placement lid = Placement.onFace(Face.Z_MAX, Mounting.taped());
    PackClass gel =
        new PackClass(
            "gel",
            Materials.ICE_PACK,
            new Dimensions(0.05, 0.04, 0.01),
            0.015,
            0,
            Source.assumed("made up"));
    Parcel chilled =
        Packings.plain()
            .withPacks(
                List.of(new PlacedPack("pack", gel, lid, new PackStart.AtTemperature(258.15))));
    TransitResult result = Transit.run(chilled, journey(1), Variation.NOMINAL, SETTINGS);
    assertTrue(result.engine().startsWith("full solver, "), result.engine());
    assertTrue(result.engine().endsWith(" cells: 'pack' can melt"), result.engine());
    assertTrue(result.coefficientChange().isEmpty());
    assertTrue(result.reduction().isEmpty());
  }
}
