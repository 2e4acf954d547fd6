package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.animal.Animals;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperature;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyBuilder;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.InnerHeat;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * What it leaves out that vapour condenses on the walls as on one: its heat, given to a single face
 * instead of all, by a foil on that face.
 */
class PooledWallsTest {
  private static final double FOIL = 0.0005;
  private static final double WATTS = 0.07;
  private static final List<Face> FACES = List.of(Face.Z_MIN, Face.X_MIN);

  private static final TransitSettings CELLS =
      new TransitSettings(Packings.FEW_CELLS, 3600, IntegratorSettings.standard()).full();

  private static final Journey COLD =
      JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 5, 18, 0), Temperature.celsius(20))
          .leg("cold", Duration.ofHours(22), Temperature.celsius(-5))
          .build();

  /** A damp cup and a warmer, each so far from its face that a foil lies between. */
  private static Parcel parcel() {
    Container cup =
        new Container(
            "cup",
            new Vessel.BoxCup(new Dimensions(0.10, 0.08, 0.06), Packings.CUP_WALL),
            new Position(0, 0, 2 * FOIL),
            List.of(Bedding.dampTowel(0.005)),
            Optional.of(new Occupant(Animals.CORN_SNAKE, Packings.BODY)));
    List<PlacedWarmer> warmers = new ArrayList<>();
    warmers.add(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.standingOff(2 * FOIL)));
    Parcel bare = Packings.parcel(List.of(cup), warmers);
    for (Face face : FACES) {
      warmers.add(foil(bare.cavity(), face));
    }
    return bare.withWarmers(warmers);
  }

  /** Gives next to nothing unless its strength is at the high end, then {@link #WATTS}. */
  private static PlacedWarmer foil(Box cavity, Face face) {
    double first = 0.9 * cavity.size(face.axis() == Axis.X ? Axis.Y : Axis.X);
    double second = 0.9 * cavity.size(face.axis() == Axis.Z ? Axis.Y : Axis.Z);
    WarmerClass kind =
        new WarmerClass(
            "foil",
            new WarmerClass.PadSize(first, second, FOIL),
            200 * first * second * FOIL,
            new PrescribedPower(TimeFunction.constant(WATTS)),
            1e-4,
            new Range(1e-5, 1),
            new Range(1, 1),
            Source.assumed("made up"));
    return new PlacedWarmer(face.name(), kind, Placement.onFace(face, Mounting.taped()), 0);
  }

  private static double atTheEnd(TransitResult result) {
    double[] means = result.mean("cup");
    return means[means.length - 1];
  }

  /**
   * In 22 h at -5 °C vapour gives the walls 85 mW on the mean. Were it all on a side wall, it would
   * warm the animal by 0.14 K, on the floor below its cup by 0.83 K; spread over all six by their
   * areas, as it is, by about 0.3 K.
   */
  @Test
  void oneFaceInsteadOfAllMovesAnAnimalByTenths() {
    Parcel parcel = parcel();
    TransitResult plain = Transit.run(parcel, COLD, Variation.NOMINAL, CELLS);
    double watts = plain.ledger().sources().get(InnerHeat.ofWalls()) / COLD.duration();
    assertEquals(0.085, watts, 0.01, "W");
    for (Face face : FACES) {
      Variation heating = Variation.NOMINAL.withWarmer(face.name(), 1);
      TransitResult heated = Transit.run(parcel, COLD, heating, CELLS);
      double rise = (atTheEnd(heated) - atTheEnd(plain)) * watts / WATTS;
      assertEquals(face == Face.Z_MIN ? 0.83 : 0.14, rise, 0.05, face.name());
    }
  }
}
