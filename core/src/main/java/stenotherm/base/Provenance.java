package stenotherm.base;

/**
 * How a value came into the library.
 *
 * <p>Thread-safe.
 */
public enum Provenance {
  /** Read in the cited work or in a text that quotes it. */
  READ("read"),
  /** Computed here from values or laws that the citation names. */
  DERIVED("derived"),
  /** Remembered from the cited work, not checked against it. */
  MEMORY("from memory"),
  /** Common practice, without a published source. */
  PRACTICE("common practice, no source"),
  /** An estimate of the authors of this library, without a source. */
  ASSUMED("assumed"),
  /** Made up to illustrate, not a measurement of any real thing. */
  ILLUSTRATIVE("illustrative");

  private final String words;

  Provenance(String words) {
    this.words = words;
  }

  /**
   * Returns the words that reports use.
   *
   * @return for example {@code "from memory"}
   */
  public String words() {
    return words;
  }
}
