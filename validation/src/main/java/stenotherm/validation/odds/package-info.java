/**
 * Odds held against direct runs of the full grid, what each choice does to them, and the odds of
 * usual packings in all weathers and with warmers in all places.
 *
 * <p>Start with {@link stenotherm.validation.odds.OddsAgreement} and {@link
 * stenotherm.validation.odds.UsualPackings}; all classes print what they find.
 *
 * <p>Limits: scenarios of the trade without a source; no measurement.
 */
@NullMarked
package stenotherm.validation.odds;

import org.jspecify.annotations.NullMarked;
