package stenotherm.parcel;

import stenotherm.base.Source;

/**
 * What covers the film through which a warmer takes its air. How much it leaves open is assumed.
 *
 * <p>Thread-safe.
 */
public enum FilmCover {
  /** Nothing: the breathable side faces the fill or the free air. */
  FREE("film free", 1),
  /** Tape along its edges, as most are held. */
  EDGES_TAPED("edges taped", 0.85),
  /** Tape over half of it. */
  HALF_TAPED("half taped over", 0.5),
  /** The breathable side lies against a wall or a cup, and breathes through its edges. */
  AGAINST_WALL("film against a wall", 0.2),
  /** Tape over all of it. */
  TAPED_OVER("taped over", 0);

  /** Where the open parts come from. */
  public static final Source SOURCE =
      Source.assumed("parts of a film that tape or a wall leaves open");

  private final String words;
  private final double open;

  FilmCover(String words, double open) {
    this.words = words;
    this.open = open;
  }

  /**
   * Returns the words that files and reports use.
   *
   * @return for example "half taped over"
   */
  public String words() {
    return words;
  }

  /**
   * Returns the words that stand after the key of a file that names the film.
   *
   * @return for example "free"
   */
  public String shortWords() {
    return words.replace("film ", "");
  }

  /**
   * Returns the part of the film that is open.
   *
   * @return 0 to 1 [-]
   */
  public double open() {
    return open;
  }
}
