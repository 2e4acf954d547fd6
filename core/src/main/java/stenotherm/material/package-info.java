/**
 * What a parcel is made of: thermal properties of materials, each with its range and source, and
 * the laws that some of them follow.
 *
 * <p>Start with {@link stenotherm.material.Material} and the catalogue {@link
 * stenotherm.material.Materials}; how surfaces radiate is in {@link
 * stenotherm.material.Emissivity}.
 *
 * <p>Limits: properties are isotropic, and constant within one run; a law that depends on
 * temperature is evaluated at a stated mean temperature before the run.
 */
@NullMarked
package stenotherm.material;

import org.jspecify.annotations.NullMarked;
