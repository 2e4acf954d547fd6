/**
 * What comparisons and maps of packings tell, in sentences, tables, pictures and files.
 *
 * <p>Start with {@link stenotherm.report.Comparison}, which judges all packings of a scenario, and
 * {@link stenotherm.report.ComparisonReport}, which tells what came out; {@link
 * stenotherm.report.MapReport} tells in which weather one packing holds. {@link
 * stenotherm.report.ReportFolder} puts the files where an earlier report was, all of them or none.
 * Every sentence about a verdict is composed in this package, in the units of the reader.
 *
 * <p>Limits: sentences are English; words are chosen for verdicts of {@link stenotherm.decision},
 * none of which permits anything.
 */
@NullMarked
package stenotherm.report;

import org.jspecify.annotations.NullMarked;
