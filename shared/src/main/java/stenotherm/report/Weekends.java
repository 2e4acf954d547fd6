package stenotherm.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import stenotherm.journey.Journey;

/** Whether a parcel is on the way on a day on which many carriers do not deliver. */
final class Weekends {
  /** What to do about it. */
  static final String ASK = "Ask your carrier whether it delivers then.";

  private Weekends() {}

  /** The day on which a journey ends, where it ends. */
  static LocalDate due(Journey journey) {
    return journey.localClock(journey.duration()).toLocalDate();
  }

  /** Tells whether a journey has a part of a Saturday or Sunday. */
  static boolean touches(Journey journey) {
    return journey
        .sealing()
        .toLocalDate()
        .datesUntil(due(journey).plusDays(1))
        .map(LocalDate::getDayOfWeek)
        .anyMatch(day -> day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY);
  }
}
