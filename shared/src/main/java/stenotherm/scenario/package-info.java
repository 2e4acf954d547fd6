/**
 * Scenario files: one animal, one journey and the packings to compare, as a person writes them.
 *
 * <p>Start with {@link stenotherm.scenario.ScenarioReader}, which turns a file into a {@link
 * stenotherm.scenario.Scenario}. Every complaint is a {@link stenotherm.text.TextFormatException}
 * with file, line, column and key. What the file leaves out is filled in from presets, and each of
 * them is told among the assumptions of the scenario.
 *
 * <p>Limits: one cup and at most one warmer in a packing; two places, whose offsets from UTC the
 * file states; outdoor temperatures from the bundled record or from one low and high for all days.
 * Sun, altitude, cold packs, vents and parcels on their side are refused by name.
 */
@NullMarked
package stenotherm.scenario;

import org.jspecify.annotations.NullMarked;
