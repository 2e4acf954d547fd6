/**
 * Heat conduction by finite volumes: rho c dT/dt = div(k grad T) + q on a rectilinear grid.
 *
 * <p>Start with {@link stenotherm.conduction.ConductionProblem} (blocks, boundaries that vary in
 * time, sources), solved by {@link stenotherm.conduction.SteadySolver} and {@link
 * stenotherm.conduction.TransientSolver}. Both use {@link stenotherm.conduction.HeatNetwork}: heat
 * capacities, conductances and named ports, through which solvers see the geometry. To couple other
 * physics step by step, use a {@link stenotherm.conduction.HeatEngine}; {@link
 * stenotherm.conduction.PortIndex} finds its inputs and films by name.
 *
 * <p>Signs: a heat flow is positive into the body.
 *
 * <p>Index order of every cell array: i + nx (j + ny k), i fastest.
 *
 * <p>Limits: conductivities follow temperature only on request ({@link
 * stenotherm.conduction.IntegratorSettings#live}), heat capacities only where something melts;
 * second order in space where the solution is smooth, less at corners between very different
 * conductivities (see {@link stenotherm.conduction.DiscretisationEstimate}).
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.conduction;

import org.jspecify.annotations.NullMarked;
