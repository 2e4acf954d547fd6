package stenotherm.decision;

import stenotherm.journey.Journey;
import stenotherm.study.JourneyStudy;
import stenotherm.transit.JourneyMeans;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Variation;

/** Searches for the delay of a leg at which an animal leaves what it tolerates, all nominal. */
final class LegDelay {
  private static final int PARTS = 4;
  private static final int HALVINGS = 4;

  private final ParcelModel model;
  private final Journey journey;
  private final int leg;
  private final double longest;

  LegDelay(ParcelModel model, Journey journey, int leg, double longest) {
    this.model = model;
    this.journey = journey;
    this.leg = leg;
    this.longest = longest;
  }

  DelayMargin margin() {
    double planned = firstBreach(0);
    if (planned <= journey.duration()) {
      return new DelayMargin.AlreadyOutside(journey.duration() - planned);
    }
    double inside = 0;
    double outside = Double.POSITIVE_INFINITY;
    for (int part = 1; part <= PARTS && Double.isInfinite(outside); part++) {
      double delay = longest * part / PARTS;
      if (breaches(delay)) {
        outside = delay;
      } else {
        inside = delay;
      }
    }
    if (Double.isInfinite(outside)) {
      return new DelayMargin.AtLeast(longest);
    }
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (inside + outside) / 2;
      if (breaches(middle)) {
        outside = middle;
      } else {
        inside = middle;
      }
    }
    return new DelayMargin.Until(inside);
  }

  private boolean breaches(double delay) {
    return firstBreach(delay) < Double.POSITIVE_INFINITY;
  }

  /** The first breach until the opening of the delayed journey [s]; infinite if there is none. */
  private double firstBreach(double delay) {
    Journey delayed = journey.delayed(leg, delay);
    JourneyMeans means = model.journeyMeans(delayed, Variation.NOMINAL);
    return JourneyStudy.fate(model.parcel(), model.storedTimes(delayed), means, delayed.duration())
        .breach();
  }
}
