/**
 * What is packed: walls in layers or panels, a fill or none, containers with an animal on its
 * bedding, warmers and packs, turned into a heat network.
 *
 * <p>Start with {@link stenotherm.parcel.Parcel}; {@link stenotherm.parcel.Container}, {@link
 * stenotherm.parcel.PlacedWarmer} and {@link stenotherm.parcel.PlacedPack} are what lies inside.
 * Coordinates: x along the length, y along the width, z upwards, the origin at the outer corner
 * below; they stay with the parcel however it lies.
 *
 * <p>Limits: a vessel's wall is a thin resistance; air that convects is a solid of effective
 * conductivity; no gaps between fill and walls; nothing moves when a parcel is turned over.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.parcel;

import org.jspecify.annotations.NullMarked;
