/**
 * What is packed: walls in layers, fill, cups with an animal on a damp towel, and warmers, turned
 * into a heat network.
 *
 * <p>Start with {@link stenotherm.parcel.Parcel}; {@link stenotherm.parcel.Cup} and {@link
 * stenotherm.parcel.PlacedWarmer} are what lies inside. Coordinates: x along the length, y along
 * the width, z upwards, the origin at the outer corner below.
 *
 * <p>Limits: boxes only; a cup's wall is a thin resistance; the air in a cup is a solid of
 * effective conductivity; no gaps between fill and walls.
 */
@NullMarked
package stenotherm.parcel;

import org.jspecify.annotations.NullMarked;
