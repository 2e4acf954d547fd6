/**
 * What surrounds a parcel: the temperature outside over time, and the coefficient with which each
 * face exchanges heat with it.
 *
 * <p>Start with {@link stenotherm.ambient.DailyExtremes}, which turns daily lows and highs into a
 * continuous temperature, {@link stenotherm.ambient.Situations}, the kinds of surroundings that
 * parcels meet, {@link stenotherm.ambient.FaceFilms}, which gives the coefficient of each face, and
 * {@link stenotherm.ambient.Sunshine}.
 *
 * <p>Limits: air and surroundings have one temperature; the sky takes heat only where a {@link
 * stenotherm.ambient.Sunshine} says so. Times are seconds of the caller's own clock; nothing here
 * knows a date.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.ambient;

import org.jspecify.annotations.NullMarked;
