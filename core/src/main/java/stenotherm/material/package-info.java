/**
 * What a parcel is made of: thermal properties of materials, each with its range and source, and
 * how they depend on temperature.
 *
 * <p>Start with {@link stenotherm.material.Material} and the catalogue {@link
 * stenotherm.material.Materials}.
 *
 * <p>Limits: properties are isotropic. Where a conductivity depends on temperature, the run decides
 * which temperature counts: a mean that is held for a part of the run, or that of each cell at
 * every step.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.material;

import org.jspecify.annotations.NullMarked;
