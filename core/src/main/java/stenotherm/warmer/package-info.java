/**
 * Air-activated warmers.
 *
 * <p>Start with {@link stenotherm.warmer.WarmerClass}, a warmer with a prescribed power curve, and
 * the catalogue {@link stenotherm.warmer.Warmers}.
 *
 * <p>Limits: the power is prescribed; it does not answer to oxygen, temperature or pressure.
 * Whoever uses it must say so: {@link stenotherm.warmer.WarmerClass#AIR_CAUTION}.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.warmer;

import org.jspecify.annotations.NullMarked;
