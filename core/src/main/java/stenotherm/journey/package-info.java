/**
 * Where a parcel goes: legs of a journey, each with its place, its ambient temperature and its
 * surface films.
 *
 * <p>Start with {@link stenotherm.journey.Journey} and {@link stenotherm.journey.Leg}. Time is
 * counted in seconds from the sealing of the parcel.
 *
 * <p>Limits: the parcel stands upright; sun, altitude and orientation are not part of a leg yet.
 */
@NullMarked
package stenotherm.journey;

import org.jspecify.annotations.NullMarked;
