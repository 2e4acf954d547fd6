/**
 * The air in and around a parcel: its gases, how they get through holes, seams and foam, and their
 * balances.
 *
 * <p>Start with {@link stenotherm.air.GasNetwork}, which steps the amounts of four gases in the
 * parcel and in each lidded cup, with {@link stenotherm.air.Opening}, through which they come and
 * go, and with {@link stenotherm.air.MoistAir}.
 *
 * <p>Limits: ideal gases; each volume is mixed; pressures inside and outside are equal but for what
 * drives a flow. How tight real seams and foam are was hardly ever measured: these are inputs with
 * wide ranges.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.air;

import org.jspecify.annotations.NullMarked;
