/**
 * A parcel on a journey: its temperatures hour by hour, and where its heat went.
 *
 * <p>Start with {@link stenotherm.transit.Transit}, which makes a {@link
 * stenotherm.transit.TransitResult}; {@link stenotherm.transit.Variation} says which uncertain
 * quantities a run takes at an end of their range. {@link stenotherm.transit.PreparedParcel} is for
 * many runs of one packing.
 *
 * <p>Limits: surface coefficients and conductivities are frozen for each leg unless live ones are
 * asked for; things stay in their places however the parcel lies; warmers give what their curve
 * prescribes.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.transit;

import org.jspecify.annotations.NullMarked;
