/**
 * Cost and accuracy of the full solver on a journey of two days.
 *
 * <p>{@link stenotherm.validation.benchmark.ReferenceTransient} is the journey, {@link
 * stenotherm.validation.benchmark.FullSolverReport} tells what a run costs and how far its outputs
 * are off, {@link stenotherm.validation.benchmark.FullSolverBenchmark} times it with JMH. {@link
 * stenotherm.validation.benchmark.ScipyComparison} solves it with SciPy beside the full solver.
 */
@NullMarked
package stenotherm.validation.benchmark;

import org.jspecify.annotations.NullMarked;
