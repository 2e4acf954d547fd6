/**
 * Many journeys of a packing: how often all goes well if what is uncertain lies anywhere in its
 * range.
 *
 * <p>Start with {@link stenotherm.study.JourneyStudy}, which runs a {@link
 * stenotherm.transit.CondensedModel} on quasi-random points of what is uncertain, see {@link
 * stenotherm.study.Uncertainties}, and makes a {@link stenotherm.study.StudyResult}: odds,
 * quantiles, bands over time.
 *
 * <p>A stated range is read as the central 90 % of a normal distribution on either side of the
 * nominal value, unless said otherwise. Quantities are independent but for what they physically
 * share.
 *
 * <p>Limits: odds are those of the model with the ranges stated. A narrow interval of sampling is
 * no certainty: most ranges are assumed.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.study;

import org.jspecify.annotations.NullMarked;
