/** Reduction. */
@NullMarked
package stenotherm.modal;

import org.jspecify.annotations.NullMarked;
