/**
 * The geometry that conduction is solved on: blocks in a box, and a rectilinear grid whose lines
 * coincide with every face of every block.
 *
 * <p>Start with {@link stenotherm.grid.Layout}, a list of {@link stenotherm.grid.Block blocks} of
 * which later ones override earlier ones, and {@link stenotherm.grid.RectilinearGrid}, the cells
 * painted from it.
 *
 * <p>Index order: cell (i, j, k) has the index i + nx (j + ny k) in every array of this library; i
 * runs fastest.
 *
 * <p>Limits: blocks are boxes parallel to the axes.
 */
@NullMarked
package stenotherm.grid;

import org.jspecify.annotations.NullMarked;
