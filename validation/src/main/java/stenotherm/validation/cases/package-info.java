/**
 * Validation cases: the case file and its reader, the refinement of the grid until a value is
 * accurate enough, the folder of results.
 *
 * <p>Internal.
 */
@NullMarked
package stenotherm.validation.cases;

import org.jspecify.annotations.NullMarked;
