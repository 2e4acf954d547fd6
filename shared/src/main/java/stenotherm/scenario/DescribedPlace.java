package stenotherm.scenario;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.journey.Place;
import stenotherm.sun.Sky;
import stenotherm.text.Node;
import stenotherm.weather.RecordedWeather;

/**
 * A place of a journey as the file describes it.
 *
 * @param place name and clock
 * @param node where the file names it, for complaints
 * @param days lows and highs day by day [K]; empty for recorded weather
 * @param first date of the first of the days; empty for the day of sealing
 * @param spread how far true outdoor temperatures may be above or below [K]
 * @param sun where it is and its sky; empty if the file does not say where
 */
record DescribedPlace(
    Place place,
    Node node,
    List<Range> days,
    Optional<LocalDate> first,
    double spread,
    Optional<SkyAbove> sun) {
  private static final double DEGREES_PER_HOUR = 15;

  /**
   * By how much the clock is ahead of mean solar time [h], which differs from what a sundial shows
   * by up to 16 min; empty if nobody knows the longitude.
   */
  Optional<Double> clockAhead() {
    return sun.map(SkyAbove::longitude)
        .or(() -> RecordedWeather.bundled().longitude(place.name()))
        .map(longitude -> clockAhead(place.utcOffset(), longitude));
  }

  /** The same place in other weather. */
  DescribedPlace in(OtherWeather.EndWeather weather) {
    return new DescribedPlace(
        place, node, weather.days(), Optional.of(weather.first()), weather.spread(), sun);
  }

  /** By how much a clock is ahead of mean solar time [h], -12 to 12. */
  static double clockAhead(ZoneOffset offset, double longitude) {
    double hours = Times.toHours(offset.getTotalSeconds()) - longitude / DEGREES_PER_HOUR;
    return Math.IEEEremainder(hours, Times.toHours(Times.DAY));
  }

  /** Coordinates in degrees, north and east positive, and the sky above them. */
  record SkyAbove(double latitude, double longitude, Sky sky) {}
}
