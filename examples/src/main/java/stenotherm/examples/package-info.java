/**
 * Runnable programs, one question each.
 *
 * <p>Start with {@link stenotherm.examples.Stenotherm}, the program for people who write no Java:
 * it has a command for each question about a scenario file.
 *
 * <p>To add a command: write what it answers as a {@link stenotherm.report.Answer} (its page is an
 * {@code AnswerPage} of that package, so that all pages have one look); write a class that extends
 * {@code ScenarioCommand}, names its files and calls what computes, as {@code CompareParcels} does;
 * add a line to {@code Stenotherm.commands()} and a row to the page of examples. Options that all
 * questions share, exit codes, progress and the writing of files are those of {@code
 * ScenarioCommand}; what asks about no scenario extends {@code ConsoleCommand} alone.
 *
 * <p>{@link stenotherm.examples.EmbeddedParcel} shows how a Java program builds a parcel of its
 * own, {@link stenotherm.examples.WallCorner} how the solver below works without any parcel. {@link
 * stenotherm.examples.WarmerPlace}, {@link stenotherm.examples.WarmerGap}, {@link
 * stenotherm.examples.FilledOrNot}, {@link stenotherm.examples.FoamOrSize}, {@link
 * stenotherm.examples.SummerPack} and {@link stenotherm.examples.DayInTheSun} vary one thing each
 * and look at what it does to the animal.
 *
 * <p>Limits: these are examples. Nothing else may depend on them.
 */
@NullMarked
package stenotherm.examples;

import org.jspecify.annotations.NullMarked;
