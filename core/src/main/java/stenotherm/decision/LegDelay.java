package stenotherm.decision;

import java.util.LinkedHashSet;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import stenotherm.animal.Limit;
import stenotherm.base.Outcome;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.Variation;

/** Searches for the delay of a leg at which an animal leaves its alarm band. */
final class LegDelay {
  private static final int PARTS = 4;
  private static final int HALVINGS = 4;

  private final ParcelModel model;
  private final Parcel parcel;
  private final Journey journey;
  private final int leg;
  private final double longest;
  private final Set<Variation> variations = new LinkedHashSet<>();

  LegDelay(ParcelModel model, Assessment assessment, Journey journey, int leg, double longest) {
    this.model = model;
    this.parcel = model.parcel();
    this.journey = journey;
    this.leg = leg;
    this.longest = longest;
    variations.add(assessment.coldEnd().variation());
    variations.add(assessment.hotEnd().variation());
    variations.addAll(assessment.lateEnds());
  }

  DelayMargin margin() {
    double planned = firstBreach(0);
    if (planned < Double.POSITIVE_INFINITY) {
      return new DelayMargin.AlreadyOutside(Math.max(0, journey.duration() - planned));
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
    double earliest = Double.POSITIVE_INFINITY;
    for (Variation variation : variations) {
      TransitResult result = model.run(delayed, variation);
      if (result.outcome() instanceof Outcome.Failed failed) {
        throw new IllegalStateException("packing '" + parcel.name() + "': " + failed.reason());
      }
      if (!result.outcome().isCompleted()) {
        throw new CancellationException("stopped");
      }
      for (Container cup : parcel.occupied()) {
        OptionalDouble breach = result.exposure(cup.name()).outside(Limit.ALARM).firstBreach();
        earliest = Math.min(earliest, breach.orElse(Double.POSITIVE_INFINITY));
      }
    }
    return earliest;
  }
}
