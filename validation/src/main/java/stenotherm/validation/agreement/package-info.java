/**
 * How far reduced models are from the full solver: parcels and journeys drawn at random, run with
 * both under the same coefficients on the same grid.
 *
 * <p>{@link stenotherm.validation.agreement.AgreementReport} draws any number of them and prints a
 * table; tests draw some.
 */
@NullMarked
package stenotherm.validation.agreement;

import org.jspecify.annotations.NullMarked;
