package stenotherm.decision;

import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Suggestions;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.transit.Variation;

/**
 * A run with every quantity at the end that is worse for one side, all at once: a figure of stress,
 * not the verdict.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Stress {
  private final Variation variation;
  private final double kelvin;
  private final List<String> cups;
  private final double[][] temperatures;

  /**
   * Runs it.
   *
   * @param side the side
   * @param variation the ends that are worse for it
   * @param study what runs it
   * @param parcel the packing of the study
   */
  public Stress(Side side, Variation variation, JourneyStudy study, Parcel parcel) {
    this.temperatures = study.temperatures(variation);
    Fate fate = study.fate(temperatures);
    this.variation = variation;
    this.kelvin = (side == Side.COLD ? fate.cold() : fate.hot()).margin();
    this.cups = parcel.occupied().stream().map(Container::name).toList();
  }

  /**
   * Returns the worse ends.
   *
   * @return where each quantity lies
   */
  public Variation variation() {
    return variation;
  }

  /**
   * Returns the smallest margin to the alarm band on the side, until the planned opening, over all
   * animals.
   *
   * @return the margin [K]; negative if the end of the band was passed
   */
  public double kelvin() {
    return kelvin;
  }

  /**
   * Returns the mean temperature of an animal.
   *
   * @param cup name of its cup
   * @return a copy, a value for each stored time of the assessment's runs [K]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] temperatures(String cup) {
    int animal = cups.indexOf(cup);
    if (animal < 0) {
      throw Suggestions.unknown("cup", cup, cups);
    }
    return temperatures[animal].clone();
  }
}
