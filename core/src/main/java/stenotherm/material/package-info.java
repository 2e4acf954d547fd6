/**
 * What a parcel is made of: thermal properties of materials, each with its range and source, and
 * the laws that some of them follow.
 *
 * <p>Start with {@link stenotherm.material.Material} and the catalogue {@link
 * stenotherm.material.Materials}; how surfaces radiate is in {@link
 * stenotherm.material.Emissivity}.
 *
 * <p>Limits: properties are isotropic. Where a conductivity depends on temperature, whoever runs a
 * body says at which temperature it is taken: a mean one, held for a part of a run, or that of each
 * cell at every step.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.material;

import org.jspecify.annotations.NullMarked;
