/**
 * What a parcel is made of: thermal properties of materials, each with its range and source, and
 * the laws that some of them follow.
 *
 * <p>Start with {@link stenotherm.material.Material} and the catalogue {@link
 * stenotherm.material.Materials}; how surfaces radiate is in {@link
 * stenotherm.material.Emissivity}.
 *
 * <p>Limits: properties are isotropic. Within a run conductivities stay as stated or replaced
 * unless it is asked to let them follow temperature; heat capacities are constant but where
 * something melts. A density never changes.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.material;

import org.jspecify.annotations.NullMarked;
