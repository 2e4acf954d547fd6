/**
 * A parcel on a journey: its temperatures over time, and where its heat went.
 *
 * <p>Start with {@link stenotherm.transit.Transit}, which makes a {@link
 * stenotherm.transit.TransitResult}; {@link stenotherm.transit.ParcelModel} is for many runs of one
 * packing, and {@link stenotherm.transit.Variation} says where in their ranges the uncertain
 * quantities of a run lie.
 *
 * <p>Limits: surface coefficients and conductivities are constant within a stage, which is a leg or
 * a part of one, unless live ones are asked for; things stay in their places however the parcel
 * lies. A pack melts as one body ({@link stenotherm.parcel.OneBody}) unless every cell is stepped.
 * Warmers burn the oxygen of well-mixed air, animals breathe it, damp bedding and animals evaporate
 * into it; water condenses on the walls at their mean temperature. Paper and board take up no
 * vapour, and no flow of air carries heat from one place inside to another.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.transit;

import org.jspecify.annotations.NullMarked;
