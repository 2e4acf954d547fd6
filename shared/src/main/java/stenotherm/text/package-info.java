/**
 * A strict reader of YAML (and thereby JSON) documents that people write by hand: every value is
 * read from its raw text with its unit, and every complaint names the file, the line, the column
 * and the key.
 *
 * <p>Start with {@link stenotherm.text.Document}, whose tree is made of {@link
 * stenotherm.text.MappingNode}, {@link stenotherm.text.SequenceNode} and {@link
 * stenotherm.text.ScalarNode}. {@link stenotherm.text.Keys} states which keys a mapping may have.
 * The one exception is {@link stenotherm.text.TextFormatException}.
 *
 * <p>Values come back in SI (K, m, kg, s, W); they are checked for their form, not for being
 * sensible. What YAML would guess from the look of a plain text (that {@code off} is false, {@code
 * 010} is eight, {@code 18:00} is 1080) is not guessed here: the caller says what a value is and
 * the text must be that.
 *
 * <p>Limits: one document per file, UTF-8, at most {@value stenotherm.text.Document#MAXIMUM_BYTES}
 * bytes and {@value stenotherm.text.Document#MAXIMUM_DEPTH} levels; no anchors, aliases, tags or
 * merge keys; comments are not kept; only the first fault of a file is reported.
 */
@NullMarked
package stenotherm.text;

import org.jspecify.annotations.NullMarked;
