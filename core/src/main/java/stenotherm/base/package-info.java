/**
 * What all other packages use: argument checks with one exception, citations, faces of a box,
 * functions of time, outcomes of a run, progress, and converters between SI and everyday units.
 *
 * <p>Start with {@link stenotherm.base.TimeFunction}, {@link stenotherm.base.Source} and {@link
 * stenotherm.base.Checks}. All quantities are SI doubles (K, m, kg, s, W, Pa, mol); the converter
 * classes ({@link stenotherm.base.Temperatures} and its siblings) are for input and output only;
 * builders take a {@link stenotherm.base.Temperature}, a {@link stenotherm.base.Length} or a {@link
 * stenotherm.base.Mass}.
 *
 * <p>Limits: there are no quantity objects; a unit is part of a name or of the Javadoc, never of a
 * type.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.base;

import org.jspecify.annotations.NullMarked;
