/**
 * Numbers and names as people read them: with units, rounded to what they are worth, metric or US.
 *
 * <p>Start with {@link stenotherm.words.Figures} for numbers and {@link stenotherm.words.FaceNames}
 * for the faces of a parcel; {@link stenotherm.words.Markup} escapes texts for HTML and SVG, {@link
 * stenotherm.words.LastWords} are those of a program that ends as nobody foresaw. For files that
 * programs read, do not use the figures: write all digits in SI units.
 */
@NullMarked
package stenotherm.words;

import org.jspecify.annotations.NullMarked;
