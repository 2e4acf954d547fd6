/**
 * Where the sun stands and how much sunlight reaches the faces of a parcel.
 *
 * <p>Start with {@link stenotherm.sun.FaceIrradiance}: for a {@link stenotherm.sun.SunSite}, a
 * {@link stenotherm.sun.Sky} and a parcel's heading it gives one function of time for each
 * direction of the world. Angles are in degrees, as maps and almanacs have them.
 *
 * <p>Limits: a horizon without houses, trees or hills; one ground reflectance; no shade by the
 * parcel's own surroundings. A parcel in the shade has no sun: leave it out there. What a face
 * absorbs of the irradiance is a matter of its surface and not computed here.
 */
@NullMarked
package stenotherm.sun;

import org.jspecify.annotations.NullMarked;
