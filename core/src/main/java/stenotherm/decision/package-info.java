/**
 * Judges a transit: how much margin is left, when and on which side, how far the uncertain
 * quantities move it, and how late the parcel may be.
 *
 * <p>Start with {@link stenotherm.decision.Assessor}, which makes an {@link
 * stenotherm.decision.Assessment}; its {@link stenotherm.decision.Verdict} is a sentence. An {@link
 * stenotherm.decision.Outlook} is for many journeys of a packing, as {@link
 * stenotherm.decision.OddsMap} asks for over the weather at both ends. A {@link
 * stenotherm.decision.TestBox} is fitted to what loggers recorded in it.
 *
 * <p>Limits: a verdict is the outcome of a calculation on stated assumptions. It is never a
 * permission: carrier rules, the IATA Live Animals Regulations, local law and a veterinarian come
 * first.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.decision;

import org.jspecify.annotations.NullMarked;
