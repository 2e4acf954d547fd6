/**
 * Odds for every lane, day and packing, on Apache Spark.
 *
 * <p>Start with {@link stenotherm.fleet.Fleet}. A packing is made ready once by the program that
 * starts the work; all machines read what it stored, and judge days. The README of the module says
 * how to run it, what it writes and where its limits are.
 */
@NullMarked
package stenotherm.fleet;

import org.jspecify.annotations.NullMarked;
