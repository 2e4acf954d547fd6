/**
 * Reduction of a linear heat network to a few modes, stepped exactly in time.
 *
 * <p>Start with {@link stenotherm.modal.ReducedModel}: it is built once for a body and the
 * configurations (network and surface coefficients) of its runs; {@link
 * stenotherm.modal.ModalEngine}s made from it follow one run each.
 *
 * <p><b>Mathematics.</b> Between changes of its films a body is linear, C dT/dt = -G T + B u, with
 * few inputs u. Its state is sought in the span of a basis V that is orthonormal in the product of
 * the heat capacities, V'CV = 1. V holds the uniform field, the blocks that may start apart, and
 * for each configuration the answers (G + s C)^-1 b to each input at a few real rates s: a rational
 * Krylov space (Ruhe 1984, Linear Algebra Appl. 58:391; choice of rates for parabolic problems:
 * Druskin and Knizhnerman 1998, SIAM J. Matrix Anal. Appl. 19:755; both from memory, the rates here
 * were found by trial). The projected matrix V'GV is symmetric; its eigenvalues are real and at
 * least 0, so that every mode decays or, where nothing fixes the temperature level, one stays. Each
 * mode obeys dz/dt = -lambda z + f and is stepped exactly for inputs linear in time.
 *
 * <p>What follows from it:
 *
 * <ul>
 *   <li>Steady states are exact for every input, since the answers at s = 0 are in the basis.
 *   <li>The heat balance closes to round-off, since the uniform field is in the basis and each
 *       mode's integral is exact.
 *   <li>One basis serves all configurations: from one to the next the state passes by a rotation.
 *   <li>A configuration that comes later is projected on the basis there is, which grows by those
 *       answers alone whose residual is too large.
 *   <li>A run holds no cells; the field is put together on demand.
 * </ul>
 *
 * <p><b>Error.</b> Two coarser models run beside each engine; see {@link
 * stenotherm.modal.ModalEngine#errorEstimates()}. It is an estimate of the reduction's error alone,
 * calibrated on random bodies, not a bound; the error of the grid comes on top. Where the error is
 * below about 1 mK the estimate was compared with a reference that is no better itself.
 *
 * <p><b>When not to trust it.</b>
 *
 * <ul>
 *   <li>Within minutes of a jump of an input or of a block that starts apart: the fastest rate of
 *       the basis is about one a minute. Extremes suffer most, and those near a heated block's
 *       edges before all.
 *   <li>Where something melts or conductivities follow temperature: refused, see {@link
 *       stenotherm.modal.ReducedModel#reasonAgainst}.
 *   <li>The maximum principle is not asserted: a temperature may overshoot those that drive it by
 *       about the error estimate.
 *   <li>Extremes are looked for at nodes chosen when the model is built, in states as runs meet
 *       them; {@link stenotherm.modal.ModalEngine#missedNow} tells exactly what they miss in a
 *       state, no bound is known beforehand.
 * </ul>
 */
@NullMarked
package stenotherm.modal;

import org.jspecify.annotations.NullMarked;
