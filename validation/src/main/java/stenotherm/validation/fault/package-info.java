/**
 * Seeded faults: patches that make core wrong, and known answers that must reveal them.
 *
 * <p>Internal.
 */
@NullMarked
package stenotherm.validation.fault;

import org.jspecify.annotations.NullMarked;
