/**
 * Air-activated warmers.
 *
 * <p>Start with {@link stenotherm.warmer.WarmerClass}, a kind of warmer, and the catalogue {@link
 * stenotherm.warmer.Warmers}; {@link stenotherm.warmer.IronPowder} is the law by which iron takes
 * oxygen and gives heat; {@link stenotherm.warmer.Bench} runs a warmer by itself, and {@link
 * stenotherm.warmer.WarmerFit} finds the warmer that a rating or a measured curve stands for.
 *
 * <p>Limits: one temperature and one conversion for the whole powder; its water is never short; no
 * measured watts of a real warmer were found, so that classes are illustrative.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.warmer;

import org.jspecify.annotations.NullMarked;
