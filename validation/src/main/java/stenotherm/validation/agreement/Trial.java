package stenotherm.validation.agreement;

import java.util.List;
import java.util.Random;
import stenotherm.base.Range;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

/** A parcel and a journey drawn at random. */
record Trial(Parcel parcel, Journey journey) {
  /** How many numbers a parcel takes at most. */
  static final int PARCEL_NUMBERS = 100;

  /** The same of a journey. */
  static final int JOURNEY_NUMBERS = 200;

  /** Hours of the longest journeys. */
  static final double MOST_HOURS = 72;

  /** Draws a parcel and a journey, each from numbers of its own. */
  static Trial of(List<Integer> parcel, List<Integer> journey, double mostHours) {
    return new Trial(
        RandomParcel.of(new Draws(parcel)), RandomJourney.of(new Draws(journey), mostHours));
  }

  /** Draws until there is one that a mesh of a number of cells fits. */
  static Trial of(Random random, Range cells) {
    Trial trial;
    do {
      trial =
          of(
              Draws.numbers(random, PARCEL_NUMBERS),
              Draws.numbers(random, JOURNEY_NUMBERS),
              MOST_HOURS);
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

  /** Compares a reduced model with the full solver at a step tolerance [K]. */
  ModelAgreement agreement(Range cells, double stepTolerance) {
    return ModelAgreement.of(parcel, journey, ModelAgreement.settings(mesh(cells), stepTolerance));
  }
}
