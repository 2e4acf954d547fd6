/** The validation program: {@link stenotherm.validation.Validation} runs what it lists as help. */
@NullMarked
package stenotherm.validation;

import org.jspecify.annotations.NullMarked;
