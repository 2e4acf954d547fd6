/**
 * Reduction of a linear heat network to a few modes, stepped exactly in time.
 *
 * <p>Start with {@link stenotherm.modal.ReducedModel}: it is built once for a body and the
 * configurations (network and surface coefficients) of its runs; {@link
 * stenotherm.modal.ModalEngine}s made from it follow one run each.
 *
 * <p><b>Mathematics.</b> Between changes of its films a body is linear, C dT/dt = -G T + B u, with
 * few inputs u. Its state is sought in the span of a basis V that is orthonormal in the inner
 * product of the heat capacities, V'CV = 1. V holds the uniform field, the blocks that may start
 * apart, and the resolvents (G + s C)^-1 b of each input b at a few real shifts s: a rational
 * Krylov space (Ruhe 1984, Linear Algebra Appl. 58:391; choice of shifts for parabolic problems:
 * Druskin and Knizhnerman 1998, SIAM J. Matrix Anal. Appl. 19:755; both from memory, the shifts
 * here were found by trial). The projected matrix V'GV is symmetric; its eigenvalues are real and
 * at least 0, so that every mode decays or, where nothing fixes the temperature level, one stays.
 * Each mode obeys dz/dt = -lambda z + f and is stepped exactly for inputs linear in time: with x =
 * -lambda dt, phi_0 = exp x and phi_(k+1) = (phi_k - 1/k!) / x,
 *
 * <pre>
 * z(dt)      = phi_0 z + dt (phi_1 f(0) + phi_2 (f(dt) - f(0)))
 * integral z = dt phi_1 z + dt^2 (phi_2 f(0) + phi_3 (f(dt) - f(0)))
 * </pre>
 *
 * (Hochbruck and Ostermann 2010, Acta Numerica 19:209, from memory; the integrals are derived.)
 *
 * <p><b>Building.</b> (G + s C) x = b is solved by conjugate gradients, several systems at a time.
 * The first guess is the Galerkin solution in the basis so far, x = V (V'GV + s)^-1 V'b. The
 * difference of solution and guess enters the basis. It is made orthonormal by block Gram-Schmidt,
 * with a second pass where the first leaves less than half (Daniel, Gragg, Kaufman and Stewart
 * 1976, Math. Comput. 30:772; Giraud, Langou and Rozloznik 2005, Comput. Math. Appl. 50:1069, on
 * why two passes do; from memory), and the Galerkin projection V'GV grows with it. Shifts are taken
 * from both ends inwards, since a basis of the resolvents at two shifts approximates most of those
 * between.
 *
 * <p>The basis takes all resolvents of the first configuration, unless the guess was good enough;
 * then the steady states of up to three more, chosen by farthest-point sampling: those whose V'GV
 * over the steady states of the first differ most; then all resolvents whose Galerkin solution has
 * too large an error; last, for each switch from one configuration to the next, the resolvents at
 * three fast shifts of the residuals that the steady states of the one leave under the other. The
 * error is estimated from the residual r = b - (G + s C) x: with the incomplete factor M of G + s
 * C, (r' M^-1 r)^(1/2) is close to the error in the energy norm. Divided by the square root of what
 * a uniform rise of 1 K takes it is an error in kelvins. Outputs that are inputs as well, such as
 * the mean of a heated block, are wrong in second order of it only.
 *
 * <p>What follows from it:
 *
 * <ul>
 *   <li>Steady states are exact for every input under up to four configurations, since the
 *       resolvents at s = 0 are in the basis.
 *   <li>The heat balance closes to round-off, since the uniform field is in the basis and each
 *       mode's integral is exact.
 *   <li>One basis serves all configurations: from one to the next the state changes by a rotation.
 *   <li>Any other configuration is projected on the basis there is, which is enriched only by the
 *       resolvents whose residual is too large. On random bodies whose fill, walls or films were up
 *       to a third off, means were then within 0.3 mK and extremes within 0.03 K of a model that
 *       was built for them; that error comes on top of the estimate.
 *   <li>A run holds no cells; the field is put together on demand.
 * </ul>
 *
 * <p><b>Error.</b> Two coarser models run beside each engine, unless it was made without; see
 * {@link stenotherm.modal.ModalEngine#errorEstimates()}. It is an estimate of the reduction's error
 * alone, calibrated on random bodies, not a bound; the error of the grid comes on top. Where the
 * error is below about 1 mK the estimate was compared with a reference that is no better itself.
 *
 * <p><b>Extremes.</b> The continuous field of a block is extreme at one of its nodes. A run looks
 * at some of them, chosen when the model is built: in none of 3000 random snapshots, in which
 * ambient, powers and blocks that start apart have jumped a minute to a week ago, do they miss more
 * than 2 mK or 0.5 % of the block's spread. {@link stenotherm.modal.ModalEngine#missedNow} looks at
 * all nodes: it tells exactly by how much the readings of a state are off the reduced model's own
 * field.
 *
 * <p><b>Stored models.</b> {@link stenotherm.modal.ReducedModel#write} stores what runs need,
 * {@link stenotherm.modal.ReducedModel#read} takes it up again, from any source, with engines that
 * run to the same bits. Version 1, all big-endian; a text is the number of its bytes (int) and its
 * UTF-8, a list its length (int) and its entries:
 *
 * <pre>
 * long    magic number, "STENOMOD" in ASCII
 * int     version of the form, 1
 * list    boundary ports: text name, byte kind (0 film, 1 held surface, 2 flux), double area
 * list    source ports: text name, double volume, double area
 * list    groups of inputs: list of int, the inputs that go together; each input in one of them
 * double  heat capacity of the body
 * list    names of the solid blocks, text
 * int     n, number of the basis vectors
 * double  n coordinates of the uniform field of 1 K
 * double  n rows of the heat content of each solid block
 * list    blocks that may start apart: text name, n coordinates
 * list    outputs: byte kind, text name, and by kind
 *           0 mean, 1 maximum, 2 minimum: text block; 3 point: double x, y, z;
 *           4 surface mean, 5 heat flow: text boundary;
 *           6 mean of an inner surface: list of text blocks, byte side, list of text neighbours
 * long    iterations that the model took to build
 * int     number of coarser models, 0 to 2
 * int     number of candidates, for each block with extremes, as the outputs name them first
 * list    configurations:
 *   int     number of its network, at most one more than those before
 *   double  surface coefficients, one for each boundary port
 *   int     m, basis vectors of this configuration, at most n
 *   system  of all m vectors
 *   rows    of the linear outputs in their order, then of the candidates, block by block
 *   rows    of the heat flow through each boundary
 *   then for each coarser model: list of int, its vectors, ascending; system; rows of the outputs
 * long    CRC-32 of all bytes before
 *
 * system: k decay rates; k columns of k coordinates, the modes; for each input k entries of V'B
 * rows:   one after the other, k entries of the modes and then those of the inputs
 * sides:  0 to 5 for xMin, xMax, yMin, yMax, zMin, zMax
 * </pre>
 *
 * <p><b>When not to trust it.</b>
 *
 * <ul>
 *   <li>Within minutes of a jump of an input or of a block that starts apart: the fastest shift of
 *       the basis is about one in ten seconds. Extremes suffer most, and those near a heated
 *       block's edges before all.
 *   <li>Where something melts or conductivities follow temperature: refused, see {@link
 *       stenotherm.modal.ReducedModel#reasonAgainst}.
 *   <li>The maximum principle is not asserted: a temperature may overshoot those that drive it by
 *       about the error estimate.
 *   <li>Extremes may be missed as said above, where a run meets states unlike the random snapshots.
 * </ul>
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.modal;

import org.jspecify.annotations.NullMarked;
