/**
 * Runnable programs, one question each.
 *
 * <p>Start with {@link stenotherm.examples.CompareParcels}, which compares the packings of a
 * scenario file and writes a report. {@link stenotherm.examples.EmbeddedParcel} shows how a Java
 * program builds a parcel of its own, {@link stenotherm.examples.WallCorner} how the solver below
 * works without any parcel. {@link stenotherm.examples.WarmerPlace}, {@link
 * stenotherm.examples.WarmerGap}, {@link stenotherm.examples.FilledOrNot}, {@link
 * stenotherm.examples.FoamOrSize}, {@link stenotherm.examples.SummerPack} and {@link
 * stenotherm.examples.DayInTheSun} vary one thing each and look at what it does to the animal.
 *
 * <p>Limits: these are examples. Nothing else may depend on them.
 */
@NullMarked
package stenotherm.examples;

import org.jspecify.annotations.NullMarked;
