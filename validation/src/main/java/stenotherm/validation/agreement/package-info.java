/**
 * How far reduced models are from stepping every cell: parcels, journeys and variations drawn at
 * random, run both ways under the same coefficients on the same grid.
 *
 * <p>{@link stenotherm.validation.agreement.AgreementReport} draws any number of them and prints a
 * table; tests draw some.
 */
@NullMarked
package stenotherm.validation.agreement;

import org.jspecify.annotations.NullMarked;
