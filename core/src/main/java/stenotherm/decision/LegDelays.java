package stenotherm.decision;

import java.util.List;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.JourneyStudy;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.JourneyMeans;
import stenotherm.transit.Variation;

/** Searches for the delays of legs at which an animal leaves what it tolerates, all nominal. */
final class LegDelays {
  private static final int PARTS = 4;
  private static final int HALVINGS = 4;

  private final Parcel parcel;
  private final CondensedModel model;
  private final Journey journey;
  private final double longest;

  LegDelays(Parcel parcel, CondensedModel model, Journey journey, double longest) {
    this.parcel = parcel;
    this.model = model;
    this.journey = journey;
    this.longest = longest;
  }

  /** The margin of each leg; empty if the planned journey itself breaches. */
  List<DelayMargin> margins(WatchedWorkers workers) {
    if (breaches(journey)) {
      return List.of();
    }
    DelayMargin[] margins = new DelayMargin[journey.legs().size()];
    workers.each(margins.length, 0, 1, leg -> margins[leg] = margin(leg));
    return List.of(margins);
  }

  private DelayMargin margin(int leg) {
    double inside = 0;
    double outside = Double.POSITIVE_INFINITY;
    for (int part = 1; part <= PARTS && Double.isInfinite(outside); part++) {
      double delay = longest * part / PARTS;
      if (breaches(journey.delayed(leg, delay))) {
        outside = delay;
      } else {
        inside = delay;
      }
    }
    if (Double.isInfinite(outside)) {
      return new DelayMargin(longest, true);
    }
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (inside + outside) / 2;
      if (breaches(journey.delayed(leg, middle))) {
        outside = middle;
      } else {
        inside = middle;
      }
    }
    return new DelayMargin(inside, false);
  }

  /** Whether there is a breach until the opening of a journey, however late it is. */
  private boolean breaches(Journey delayed) {
    CondensedModel there = model.onceOn(delayed);
    JourneyMeans means = there.run(Variation.NOMINAL);
    return JourneyStudy.fate(parcel, there.times(), means, delayed.duration()).breach()
        < Double.POSITIVE_INFINITY;
  }
}
