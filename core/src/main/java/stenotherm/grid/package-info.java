/**
 * The geometry that conduction is solved on: blocks in a box, and a rectilinear grid whose lines
 * coincide with every face of every block.
 *
 * <p>Start with {@link stenotherm.grid.Layout}, a list of {@link stenotherm.grid.Block blocks} of
 * which later ones override earlier ones, and {@link stenotherm.grid.RectilinearGrid}, its cells.
 *
 * <p>Index order: cell (i, j, k) has the index i + nx (j + ny k) in every array of this library; i
 * runs fastest.
 *
 * <p>Round blocks: a block may fill the elliptic cylinder in its box. It takes the cells whose
 * centre it contains. Volumes, surface areas and distances to the surface are those of the true
 * shape, so that films, thin resistances, heat capacities and powers are right in total on any
 * grid.
 *
 * <p>Radii: in {@link stenotherm.grid.Coordinates cylindrical and spherical coordinates} the same
 * cells and solvers serve for rods, tubes, spheres and shells.
 *
 * <p>Limits: boxes are parallel to the axes; an environment is a box; model a round shell thinner
 * than a cell as a thin resistance.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.grid;

import org.jspecify.annotations.NullMarked;
