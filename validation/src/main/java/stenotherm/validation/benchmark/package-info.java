/**
 * Cost and accuracy of the full solver and of reduced models on a journey of two days.
 *
 * <p>{@link stenotherm.validation.benchmark.ReferenceTransient} is the journey, {@link
 * stenotherm.validation.benchmark.FullSolverReport} tells what a run costs and how far its outputs
 * are off, {@link stenotherm.validation.benchmark.FullSolverBenchmark} times it with JMH. {@link
 * stenotherm.validation.benchmark.ScipyComparison} solves it with SciPy beside the full solver.
 *
 * <p>{@link stenotherm.validation.benchmark.ModalReport} tells the same of reduced models, {@link
 * stenotherm.validation.benchmark.ModalBenchmark} times them; {@link
 * stenotherm.validation.benchmark.ReferenceJourney} is a whole scenario of that kind.
 */
@NullMarked
package stenotherm.validation.benchmark;

import org.jspecify.annotations.NullMarked;
