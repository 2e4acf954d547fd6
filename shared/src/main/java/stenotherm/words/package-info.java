/**
 * Numbers and names as people read them: with units, rounded to what they are worth, metric or US.
 *
 * <p>Start with {@link stenotherm.words.Figures} for numbers and {@link stenotherm.words.FaceNames}
 * for the faces of a parcel. For files that programs read, do not use this package: write all
 * digits in SI units.
 */
@NullMarked
package stenotherm.words;

import org.jspecify.annotations.NullMarked;
