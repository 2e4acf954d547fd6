/**
 * Recorded weather that comes with the library, for journeys through days that really happened.
 *
 * <p>Start with {@link stenotherm.weather.RecordedWeather#bundled()}. A small record is inside: the
 * highest and lowest temperature of each day of 2012 to 2015 in New York and Seattle. Its file
 * begins with its source, its licence and the command that made it.
 *
 * <p>Limits: air temperature only; no wind, no sun, no humidity. The days were collected for
 * teaching, the stations are not named.
 */
@NullMarked
package stenotherm.weather;

import org.jspecify.annotations.NullMarked;
