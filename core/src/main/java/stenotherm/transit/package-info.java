/**
 * A parcel on a journey: its temperatures hour by hour, and where its heat went.
 *
 * <p>Start with {@link stenotherm.transit.Transit}, which makes a {@link
 * stenotherm.transit.TransitResult}; {@link stenotherm.transit.Variation} says which uncertain
 * quantities a run takes at an end of their range.
 *
 * <p>Limits: surface coefficients are frozen for each leg, at the leg's mean ambient temperature;
 * warmers give what their curve prescribes.
 */
@NullMarked
package stenotherm.transit;

import org.jspecify.annotations.NullMarked;
