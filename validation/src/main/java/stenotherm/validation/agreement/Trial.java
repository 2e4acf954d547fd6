package stenotherm.validation.agreement;

import java.util.List;
import java.util.Random;
import stenotherm.base.Range;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.transit.Factor;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Variation;

/** A parcel, a journey and where uncertain quantities lie, drawn at random. */
record Trial(Parcel parcel, Journey journey, Variation variation) {
  /** How many numbers a parcel takes at most. */
  static final int PARCEL_NUMBERS = 100;

  /** The same of a journey. */
  static final int JOURNEY_NUMBERS = 200;

  /** The same of a variation. */
  static final int VARIATION_NUMBERS = 20;

  /** Hours of the longest journeys. */
  static final double MOST_HOURS = 72;

  /** Draws a parcel, a journey and a variation, each from numbers of its own. */
  static Trial of(
      List<Integer> parcel, List<Integer> journey, List<Integer> variation, double mostHours) {
    return new Trial(
        RandomParcel.of(new Draws(parcel)),
        RandomJourney.of(new Draws(journey), mostHours),
        variation(new Draws(variation)));
  }

  private static Variation variation(Draws draws) {
    Variation variation = Variation.NOMINAL;
    for (Factor factor : Factor.values()) {
      boolean varied = draws.chance(0.7);
      double position = draws.within(-1, 1);
      variation = varied ? variation.with(factor, position) : variation;
    }
    boolean varied = draws.chance(0.5);
    double offset = draws.within(-8, 8);
    return varied ? variation.withOffset(offset) : variation;
  }

  /** Draws until there is one that a mesh of a number of cells fits. */
  static Trial of(Random random, Range cells) {
    return of(random, cells, MOST_HOURS);
  }

  /** The same with a journey of at most some hours. */
  static Trial of(Random random, Range cells, double mostHours) {
    Trial trial;
    do {
      trial =
          of(
              Draws.numbers(random, PARCEL_NUMBERS),
              Draws.numbers(random, JOURNEY_NUMBERS),
              Draws.numbers(random, VARIATION_NUMBERS),
              mostHours);
    } while (!trial.fits(cells));
    return trial;
  }

  /** Tells whether there is a mesh of a number of cells: with many things none is coarse enough. */
  boolean fits(Range cells) {
    return Meshes.count(parcel, journey, mesh(cells)) <= cells.high();
  }

  /** The mesh with about a number of cells. */
  MeshControl mesh(Range cells) {
    return Meshes.of(parcel, journey, cells);
  }

  /** Makes a reduced model and compares its runs with stepping every cell. */
  ModelAgreement agreement(Range cells, double stepTolerance) {
    return ModelAgreement.of(
        parcel, journey, variation, ModelAgreement.settings(mesh(cells), stepTolerance));
  }

  /** The same with everything nominal only. */
  ModelAgreement nominalAgreement(Range cells, double stepTolerance) {
    return ModelAgreement.ofNominal(
        ParcelModel.of(parcel, journey, ModelAgreement.settings(mesh(cells), stepTolerance)),
        journey);
  }
}
