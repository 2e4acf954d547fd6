package stenotherm.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stenotherm.base.Checks;
import stenotherm.study.Fate;
import stenotherm.study.Odds;

/**
 * What mishaps do to a shipment.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param mishaps one or two that happen together; none for the shipment as planned
 * @param nominal how the animals fare until opening with all else as stated
 * @param opening the opening, since sealing [s]
 * @param within odds that every animal stays within what it tolerates until opening; empty if only
 *     the run with all as stated was made
 */
public record Harm(List<Mishap> mishaps, Fate nominal, double opening, Optional<Odds> within) {
  /** What an animal meets. */
  public enum Danger {
    /** Too cold. */
    COLD("cold"),
    /** Too hot. */
    HOT("heat"),
    /** Too little oxygen or too much carbon dioxide. */
    AIR("stale air"),
    /** A place in reach that burns. */
    BURN("a hot place in reach");

    private final String words;

    Danger(String words) {
      this.words = words;
    }

    /**
     * Returns the words that reports use.
     *
     * @return for example "stale air"
     */
    public String words() {
      return words;
    }
  }

  /** Copies the list. */
  public Harm {
    mishaps = List.copyOf(mishaps);
    Checks.given("nominal", nominal);
    Checks.given("odds", within);
  }

  /**
   * Says what happens.
   *
   * @param units writes quantities in the reader's units
   * @return the mishaps, joined by "and"; "as planned" if there is none
   */
  public String words(UnitWords units) {
    return mishaps.isEmpty()
        ? "as planned"
        : mishaps.stream().map(each -> each.words(units)).collect(Collectors.joining(" and "));
  }

  /**
   * Says what happens to a shipment, and in which leg.
   *
   * @param units writes quantities in the reader's units
   * @param planned the shipment as planned
   * @return the mishaps, joined by "and"; "as planned" if there is none
   * @throws stenotherm.base.InvalidInputException if one of them cannot happen to the shipment
   */
  public String words(UnitWords units, Remedy.Shipment planned) {
    if (mishaps.isEmpty()) {
      return words(units);
    }
    List<String> all = new ArrayList<>();
    Remedy.Shipment before = planned;
    for (Mishap each : mishaps) {
      all.add(each.words(units, before.journey()));
      before = each.applyTo(before.parcel(), before.journey());
    }
    return String.join(" and ", all);
  }

  /**
   * Tells whether an animal leaves what it tolerates with all else as stated.
   *
   * @return whether there is a breach until opening
   */
  public boolean isBreached() {
    return nominal.breach() <= opening;
  }

  /**
   * Tells whether this is too much for the shipment.
   *
   * @return whether its odds are at the level {@link Level#DO_NOT}; false where no odds were found
   */
  public boolean isBroken() {
    return within.isPresent() && Level.of(within.get()) == Level.DO_NOT;
  }

  /**
   * Returns what is met first, or where nothing is, which end is nearer.
   *
   * @return the danger
   */
  public Danger danger() {
    if (isBreached()) {
      double first = nominal.breach();
      if (nominal.burnt() == first) {
        return Danger.BURN;
      }
      if (nominal.airless() == first) {
        return Danger.AIR;
      }
      return nominal.cold().breach() == first ? Danger.COLD : Danger.HOT;
    }
    return nominal.cold().margin() <= nominal.hot().margin() ? Danger.COLD : Danger.HOT;
  }

  /**
   * Returns what is left to the nearer end of an alarm band.
   *
   * @return the margin until opening with all else as stated [K]; negative outside
   */
  public double margin() {
    return Math.min(nominal.cold().margin(), nominal.hot().margin());
  }
}
