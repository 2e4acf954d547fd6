package stenotherm.validation.studies;

/**
 * A case that is computed by code.
 *
 * <p>Internal. Implementations are stateless, thus thread-safe.
 */
public interface Study {
  /**
   * Returns what the case is.
   *
   * @return the heading
   */
  Heading heading();

  /**
   * Computes the case.
   *
   * @param depth how thoroughly
   * @return the checks with all that belongs beside them
   */
  Findings run(Depth depth);

  /** How thoroughly a study is done. */
  enum Depth {
    /** A few values on coarse grids, for the tests of every build. */
    FAST,
    /** All values on fine grids, for the report. */
    FULL
  }

  /** What reference values are; kinds are never mixed. */
  enum Kind {
    /** Exact mathematics. */
    VERIFICATION("verification", "exact mathematics"),
    /** Published solutions: printed tables, worked examples, rules of handbooks. */
    BENCHMARK("benchmark", "published solution"),
    /** What was measured on a real thing; a difference is a finding, not a failure. */
    MEASURED("measured", "measured on a real thing"),
    /** What people do, without a source; a difference is a finding, not a failure. */
    PRACTICE("practice", "common practice without a source"),
    /** Earlier output of this program, or that of another program of the same authors. */
    REGRESSION("regression", "own earlier output or other solver"),
    /** A case file need not say. */
    UNSTATED("not stated", "the file does not say");

    private final String word;
    private final String meaning;

    Kind(String word, String meaning) {
      this.word = word;
      this.meaning = meaning;
    }

    /**
     * Tells whether a value outside its tolerance is a finding about model or source, to be
     * explained, and not a failure of the program.
     *
     * @return true for measurements and practice, whose circumstances are only partly known
     */
    public boolean differenceIsFinding() {
      return this == MEASURED || this == PRACTICE;
    }

    /**
     * Returns the word by which files and reports name the kind.
     *
     * @return the word
     */
    public String word() {
      return word;
    }

    /**
     * Returns what the word means.
     *
     * @return the meaning
     */
    public String meaning() {
      return meaning;
    }
  }

  /**
   * What a case is.
   *
   * @param id a name, unique in a run
   * @param title what the case shows
   * @param source where the case comes from
   * @param kind what its reference values are
   */
  record Heading(String id, String title, String source, Kind kind) {}
}
