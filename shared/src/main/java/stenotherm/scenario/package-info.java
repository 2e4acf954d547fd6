/**
 * Scenario files: animals, a journey and the packings to compare, as a person writes them.
 *
 * <p>Start with {@link stenotherm.scenario.ScenarioReader}, which turns a file into a {@link
 * stenotherm.scenario.Scenario}. Every complaint is a {@link stenotherm.text.TextFormatException}
 * with file, line, column, key and the name of what it belongs to. Presets fill in what the file
 * leaves out; each is listed among the assumptions of the scenario.
 *
 * <p>All keys are written down once, in {@code Vocabulary}; {@link
 * stenotherm.scenario.ScenarioReference} makes the reference page and the schema for editors from
 * it. A value that a preset fills in is read from the preset's text as if the file had said it.
 *
 * <p>Limits: outdoor temperatures come from the bundled record or from daily lows and highs; the
 * sky is clear but for a stated cloud cover; named journeys have sun only at places with
 * coordinates. Vents and the chemistry of warmers are refused by name.
 */
@NullMarked
package stenotherm.scenario;

import org.jspecify.annotations.NullMarked;
