package stenotherm.base;

/**
 * Where a value comes from.
 *
 * <p>A value, thus thread-safe.
 *
 * @param work the cited work: authors, year, title or number and edition
 * @param locator table, equation or page in it; empty if the work as a whole is meant
 * @param provenance how the value was obtained from it
 */
public record Source(String work, String locator, Provenance provenance) {
  /**
   * Checks the citation.
   *
   * @throws InvalidInputException if the work is blank
   */
  public Source {
    Checks.name("source work", work);
  }

  /**
   * A value read in a work.
   *
   * @param work the cited work
   * @param locator table, equation or page in it
   * @return the citation
   */
  public static Source read(String work, String locator) {
    return new Source(work, locator, Provenance.READ);
  }

  /**
   * A value derived from a work.
   *
   * @param work the cited work
   * @param locator what was derived from what
   * @return the citation
   */
  public static Source derived(String work, String locator) {
    return new Source(work, locator, Provenance.DERIVED);
  }

  /**
   * A value remembered from a work.
   *
   * @param work the cited work
   * @param locator table, equation or page in it
   * @return the citation
   */
  public static Source memory(String work, String locator) {
    return new Source(work, locator, Provenance.MEMORY);
  }

  /**
   * Common practice without a published source.
   *
   * @param what the practice
   * @return the citation
   */
  public static Source practice(String what) {
    return new Source(what, "", Provenance.PRACTICE);
  }

  /**
   * An estimate without a source.
   *
   * @param what what was assumed, and why
   * @return the citation
   */
  public static Source assumed(String what) {
    return new Source(what, "", Provenance.ASSUMED);
  }

  /**
   * Returns the citation as reports print it.
   *
   * @return work, locator and how the value was obtained
   */
  public String text() {
    return work + (locator.isEmpty() ? "" : ", " + locator) + " (" + provenance.words() + ")";
  }
}
