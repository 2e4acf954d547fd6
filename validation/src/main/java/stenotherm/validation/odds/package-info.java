/**
 * Odds held against direct runs of the full grid, and the odds of usual packings in all weathers.
 *
 * <p>Start with {@link stenotherm.validation.odds.OddsAgreement} and {@link
 * stenotherm.validation.odds.UsualPackings}; both print what they find.
 *
 * <p>Limits: scenarios of the trade without a source; no measurement.
 */
@NullMarked
package stenotherm.validation.odds;

import org.jspecify.annotations.NullMarked;
