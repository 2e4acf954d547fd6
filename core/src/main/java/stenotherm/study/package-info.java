/**
 * Many journeys of a packing: how often all goes well if what is uncertain lies anywhere in its
 * range.
 *
 * <p>Odds come with the interval that sampling leaves open, see {@link stenotherm.study.Odds}; what
 * is uncertain has its share of the variance, see {@link stenotherm.study.Share}.
 *
 * <p>Limits: odds are those of the model with the ranges stated. A narrow interval of sampling is
 * no certainty.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.study;

import org.jspecify.annotations.NullMarked;
