/**
 * Cases that a case file cannot state, as code: each brings its reference values and what was
 * computed for them, and enters the same report as the files.
 */
@NullMarked
package stenotherm.validation.studies;

import org.jspecify.annotations.NullMarked;
