package stenotherm.parcel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stenotherm.animal.AnimalBody;
import stenotherm.base.Lengths;
import stenotherm.grid.Shape;

/**
 * What does not fit into a vessel.
 *
 * @param what what takes the room, as in "the animal"
 * @param where the room that it takes, as in "length"
 * @param needed what it takes [m]
 * @param room what the vessel has [m]
 */
record Misfit(String what, String where, double needed, double room) {
  /** Thinner bedding is none [m]. */
  private static final double LEAST_BEDDING = 0.001;

  /** Far below what is shown, far above the error of a sum. */
  private static final double ROUND_OFF = 1e-6;

  /** What bedding or animal lacks first in a vessel. */
  static Optional<Misfit> of(Vessel vessel, List<Bedding> bedding, Optional<Occupant> occupant) {
    Dimensions inner = vessel.inner();
    double lain = Container.thickness(bedding);
    List<Misfit> all = new ArrayList<>();
    all.add(new Misfit("the bedding", "height", lain, inner.height()));
    if (occupant.isPresent()) {
      Dimensions body = occupant.get().heap().dimensions(inner);
      int count = occupant.get().count();
      String who = count == 1 ? "the animal" : "the heap of " + count + " animals";
      all.add(new Misfit(who, "length", body.length(), inner.length()));
      all.add(new Misfit(who, "width", body.width(), inner.width()));
      if (vessel.shape() == Shape.CYLINDER_Z) {
        double diagonal = Math.hypot(body.length(), body.width());
        all.add(new Misfit(who + " from corner to corner", "diameter", diagonal, inner.length()));
      }
      String what = lain > 0 ? who + " on its bedding" : who;
      double top = Container.animalBottom(vessel, lain, body) + body.height();
      all.add(new Misfit(what, "height", top, Container.ceiling(vessel, body)));
    }
    return all.stream().filter(each -> each.needed > each.room).findFirst();
  }

  /** What is too little, rounded so that the numbers add up and what is said is enough. */
  String inWords() {
    double shown = up(Lengths.toMillimetres(needed), 10);
    double shownRoom = down(Lengths.toMillimetres(room), 10);
    double inches = up(Lengths.toInches(needed), 100);
    double inchesRoom = down(Lengths.toInches(room), 100);
    return what
        + " takes "
        + LengthText.of(shown, inches)
        + " of "
        + where
        + " but the container has "
        + LengthText.of(shownRoom, inchesRoom)
        + ": "
        + LengthText.of(shown - shownRoom, inches - inchesRoom)
        + " too little";
  }

  /** Says what would have room: another vessel that people know, or less bedding. */
  static String remedy(Vessel vessel, List<Bedding> bedding, Optional<Occupant> occupant) {
    String larger =
        known(VesselSizes.all(), vessel, bedding, occupant)
            .map(
                size ->
                    "Take a larger one, such as '"
                        + size.name()
                        + "'"
                        + (size.vessel() instanceof Vessel.RoundCup
                            ? metric(vessel, bedding, occupant)
                            : ""))
            .orElseGet(
                () -> "No larger container known by name has room: " + ownSize(bedding, occupant));
    double spare = spareHeight(vessel, bedding, occupant);
    if (spare < LEAST_BEDDING) {
      return larger;
    }
    return larger
        + ", or at most "
        + LengthText.of(down(Lengths.toMillimetres(spare), 10), down(Lengths.toInches(spare), 100))
        + " of bedding";
  }

  /** The cup that those take who measure in metric units. */
  private static String metric(Vessel vessel, List<Bedding> bedding, Optional<Occupant> occupant) {
    return known(VesselSizes.metric(), vessel, bedding, occupant)
        .filter(size -> size.vessel() instanceof Vessel.RoundCup)
        .map(size -> " or '" + size.name() + "'")
        .orElse("");
  }

  /** The smallest larger vessel of the same kind that has room, else the smallest of any kind. */
  private static Optional<VesselSize> known(
      List<VesselSize> sizes, Vessel vessel, List<Bedding> bedding, Optional<Occupant> occupant) {
    List<VesselSize> roomy =
        sizes.stream()
            .filter(size -> size.vessel().volume() > vessel.volume())
            .filter(size -> of(size.vessel(), bedding, occupant).isEmpty())
            .sorted(Comparator.comparingDouble(size -> size.vessel().volume()))
            .toList();
    return roomy.stream()
        .filter(size -> size.vessel().getClass() == vessel.getClass())
        .findFirst()
        .or(() -> roomy.stream().findFirst());
  }

  /** A box that just has room. */
  private static String ownSize(List<Bedding> bedding, Optional<Occupant> occupant) {
    double lain = Container.thickness(bedding);
    if (occupant.isEmpty()) {
      return "write a size of your own, higher than " + LengthText.of(lain);
    }
    Occupant heap = occupant.get().heap();
    AnimalBody.Extents body = heap.body().extents(heap.animal().tissue());
    return String.format(
        Locale.ROOT,
        "write a size of your own, at least %.0f x %.0f x %.0f mm",
        up(Lengths.toMillimetres(body.length()), 1),
        up(Lengths.toMillimetres(body.width()), 1),
        up(Lengths.toMillimetres(lain + body.height()), 1));
  }

  /** Height that a standing vessel leaves for its bedding, if all else fits; else 0 [m]. */
  private static double spareHeight(
      Vessel vessel, List<Bedding> bedding, Optional<Occupant> occupant) {
    if (bedding.isEmpty()
        || Container.isLying(vessel)
        || of(vessel, List.of(), occupant).isPresent()) {
      return 0;
    }
    Dimensions inner = vessel.inner();
    return inner.height() - occupant.map(who -> who.heap().dimensions(inner).height()).orElse(0.0);
  }

  private static double up(double value, int parts) {
    return Math.ceil(value * parts - ROUND_OFF) / parts;
  }

  private static double down(double value, int parts) {
    return Math.floor(value * parts + ROUND_OFF) / parts;
  }
}
