package stenotherm.validation.studies;

import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Something that loggers in parcels on their way saw.
 *
 * @param what what was sent, when and how
 * @param parcels number of parcels; 0 if not stated
 * @param seen what is told of them
 * @param value how much of it was seen [unit]
 * @param unit the unit
 * @param months months in which they were sent; all if not stated
 * @param mildOnly whether carriers take them only while it has 45 °F to 85 °F outdoors
 * @param source where it was read
 */
record LoggedParcel(
    String what,
    int parcels,
    Seen seen,
    double value,
    String unit,
    Set<Month> months,
    boolean mildOnly,
    String source) {
  private static final Set<Month> ALL_YEAR = EnumSet.allOf(Month.class);

  private static final String QUEENS =
      "queen shipments in the USA, May and June 1998, abstract read"
          + " (acnpsearch.tweb-dev.unibo.it/singlejournalindex/64866295; authors not shown)";
  private static final String MICE =
      "Syversen, Pineda and Watson 2008, Temperature variations recorded during interinstitutional"
          + " air shipments of laboratory mice, abstract read; that carriers take mice at 45 °F to 85 °F"
          + " only: project description of 2006 by the first author, read";
  private static final String INSECTS = "Korean J. Appl. Entomol. 60:203 (2021), abstract read";

  /** What is told of logged temperatures. */
  enum Seen {
    /** Share of parcels that stayed within 10 °C to 36 °C. */
    STAYED_WITHIN("stayed within 10 °C to 36 °C"),
    /** Share of parcels that met more than 29.4 °C. */
    MET_WARMTH("met more than 29.4 °C"),
    /** Share of parcels that met less than 7.2 °C. */
    MET_COLD("met less than 7.2 °C"),
    /** Share of parcels whose highest and lowest temperature differed by 11 K or more. */
    SWUNG("swung by 11 K or more"),
    /** Mean temperature of the parcels. */
    MEAN("mean temperature"),
    /** Lowest temperature of any parcel. */
    LOWEST("lowest of all"),
    /** Highest temperature of any parcel. */
    HIGHEST("highest of all");

    private final String words;

    Seen(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** What the sources tell. */
  static List<LoggedParcel> all() {
    Set<Month> spring = EnumSet.of(Month.MAY, Month.JUNE);
    Set<Month> summer = EnumSet.of(Month.JUNE, Month.JULY, Month.AUGUST);
    String queens = "queen bees by mail and courier, one to three days";
    String mice = "laboratory mice by air, 24 h and more";
    String insects = "insects for biological control, 36 h to 48 h, taken as summer";
    String medicines = "medicines by mail, winter and summer";
    String medicine =
        "Evaluation of temperature excursions from USP 659 recommendations during mail"
            + " transit, 2023, doi 10.1016/j.japh.2023.02.002, abstract read";
    Set<Month> both =
        EnumSet.of(Month.DECEMBER, Month.JANUARY, Month.FEBRUARY, Month.AUGUST, Month.SEPTEMBER);
    return List.of(
        // 13 of 19
        new LoggedParcel(queens, 19, Seen.STAYED_WITHIN, 68, "%", spring, false, QUEENS),
        new LoggedParcel(queens, 19, Seen.LOWEST, -6.7, "°C", spring, false, QUEENS),
        new LoggedParcel(queens, 19, Seen.HIGHEST, 43, "°C", spring, false, QUEENS),
        new LoggedParcel(mice, 103, Seen.MET_WARMTH, 49.5, "%", ALL_YEAR, true, MICE),
        new LoggedParcel(mice, 103, Seen.MET_COLD, 14.6, "%", ALL_YEAR, true, MICE),
        new LoggedParcel(mice, 103, Seen.SWUNG, 61, "%", ALL_YEAR, true, MICE),
        new LoggedParcel(insects, 0, Seen.MEAN, 25.6, "°C", summer, false, INSECTS),
        new LoggedParcel(insects, 0, Seen.LOWEST, 18.1, "°C", summer, false, INSECTS),
        new LoggedParcel(insects, 0, Seen.HIGHEST, 30.7, "°C", summer, false, INSECTS),
        new LoggedParcel(medicines, 36, Seen.LOWEST, -14.9, "°C", both, false, medicine),
        new LoggedParcel(medicines, 36, Seen.HIGHEST, 39.1, "°C", both, false, medicine));
  }
}
