/**
 * Where a parcel goes: legs of a journey, each with its place and its surroundings, and named
 * templates of journeys.
 *
 * <p>Start with {@link stenotherm.journey.Journey} and {@link stenotherm.journey.Leg}, or with
 * {@link stenotherm.journey.JourneyTemplates}. Time is counted in seconds from the sealing of the
 * parcel.
 *
 * <p>Limits: a delay of one leg makes all later ones later; a missed flight or a closed counter is
 * a delay that the caller states.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.journey;

import org.jspecify.annotations.NullMarked;
