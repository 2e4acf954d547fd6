/**
 * Reduction of a linear heat network to a few modes, stepped exactly in time.
 *
 * <p>Build a {@link stenotherm.modal.ReducedModel} once for a body. Make a {@link
 * stenotherm.modal.ModalEngine} from it for each run.
 *
 * <p><b>Mathematics.</b> As long as conductances do not change, a body is linear: C dT/dt = -G T +
 * B u, with few inputs u. Its state is sought in the span of a basis V that is orthonormal in the
 * inner product of the heat capacities, V'CV = 1. V holds the uniform field, the blocks that may
 * start apart, and the resolvents (G + s C)^-1 b of each input b at a few real shifts s. It spans a
 * rational Krylov space (Ruhe 1984, Linear Algebra Appl. 58:391; choice of shifts for parabolic
 * problems: Druskin and Knizhnerman 1998, SIAM J. Matrix Anal. Appl. 19:755; both from memory; the
 * shifts here were found by trial). The projected matrix V'GV is symmetric with eigenvalues of at
 * least 0. So every mode decays, except that one stays where nothing fixes the temperature level.
 * Each mode obeys dz/dt = -lambda z + f. For inputs linear in time its step is exact: with x =
 * -lambda dt, phi_0 = exp x and phi_(k+1) = (phi_k - 1/k!) / x,
 *
 * <pre>
 * z(dt)      = phi_0 z + dt (phi_1 f(0) + phi_2 (f(dt) - f(0)))
 * integral z = dt phi_1 z + dt^2 (phi_2 f(0) + phi_3 (f(dt) - f(0)))
 * </pre>
 *
 * (Hochbruck and Ostermann 2010, Acta Numerica 19:209, from memory; the integrals are derived.)
 *
 * <p><b>Configurations.</b> A configuration is a set of surface coefficients and of factors on the
 * conductivities of the blocks that vary. Conductances that change by the same ratio form a group,
 * see {@link stenotherm.conduction.ConductanceGroup}. With K the conductances of a group in the
 * network as given and g their ratio, V'GV is the sum of g V'KV over the groups. The matrices V'KV
 * are found once, when the model is built. After that {@link
 * stenotherm.modal.ReducedModel#configuration} finds the modes for any coefficients and factors
 * from this sum and needs no cells. When a run goes from one configuration to another, its state
 * stays the same and is only rotated to the new modes.
 *
 * <p><b>Building.</b> One basis spans all configurations that the builder is given; it does not
 * change after that. It takes up, in this order:
 *
 * <ol>
 *   <li>the steady states (s = 0) of the first configuration;
 *   <li>those of up to three others, chosen by farthest-point sampling: the ones whose V'GV, over
 *       the steady states of the first, differ most;
 *   <li>the resolvents of these configurations at the other shifts: all of the first, of the others
 *       those whose Galerkin solution has too large an error;
 *   <li>of the remaining configurations the resolvents whose Galerkin solution has too large an
 *       error, at all shifts;
 *   <li>for each configuration and the one given before it, the residuals that the steady states of
 *       the former leave under the latter, solved for at three fast shifts.
 * </ol>
 *
 * <p>(G + s C) x = b is solved by conjugate gradients. The first guess is the Galerkin solution in
 * the basis so far, x = V (V'GV + s)^-1 V'b, and the difference of solution and guess enters the
 * basis. It is made orthonormal by block Gram-Schmidt, with a second pass where the first leaves
 * less than half (Daniel, Gragg, Kaufman and Stewart 1976, Math. Comput. 30:772; Giraud, Langou and
 * Rozloznik 2005, Comput. Math. Appl. 50:1069, on why two passes do; from memory). Shifts are taken
 * from both ends inwards, since the resolvents at two shifts approximate most of those between.
 *
 * <p>The error of a Galerkin solution is estimated from its residual r = b - (G + s C) x. With the
 * incomplete factor M of G + s C, (r' M^-1 r)^(1/2) is close to the error in the energy norm.
 * Divided by the square root of what a uniform rise of 1 K takes, it is an error in kelvins.
 *
 * <p>What follows from this:
 *
 * <ul>
 *   <li>Steady states are exact for every input under the first configuration and those chosen with
 *       it, but for conductances of a group whose ratios differ a little.
 *   <li>The heat balance closes to round-off, since the uniform field is in the basis and each
 *       mode's integral is exact.
 *   <li>An output that is also an input, such as the mean of a heated block, has an error of second
 *       order only.
 *   <li>A configuration that the basis was not built for is the less exact the less it is like
 *       those that it was built for.
 *   <li>A run holds no cells; the field is put together on demand.
 * </ul>
 *
 * <p><b>Error.</b> Two coarser models run beside each engine, unless it was made without them; see
 * {@link stenotherm.modal.ModalEngine#errorEstimates()}. The estimate is calibrated on random
 * bodies and is no bound. It covers the error of the reduction alone; that of the grid comes on
 * top. Below about 1 mK it could not be tested, since the reference has errors of that size.
 *
 * <p><b>Extremes.</b> The continuous field of a block is extreme at one of its nodes. Extremes are
 * read at some of these only, the candidates. They are chosen when the model is built, from 6000
 * random snapshots in which ambients, powers and blocks that start apart jumped a minute to a week
 * ago, under up to twelve of the configurations that are spanned, each with its own films: where an
 * extreme lies depends on them. In none of these do the candidates miss more than 1 mK or 0.1 % of
 * the block's spread, whichever is more.
 *
 * <p><b>When not to trust it.</b>
 *
 * <ul>
 *   <li>Within minutes of a jump of an input, or of the start if a block starts apart: the fastest
 *       shift of the basis is about one in ten seconds. Extremes suffer most, above all near the
 *       edges of a heated block.
 *   <li>Where something melts or conductivities follow temperature: what melts is refused, see
 *       {@link stenotherm.conduction.ReducibleNetwork#reasonAgainst}, and so should the rest be by
 *       the caller.
 *   <li>Where conductivities are far from those of any configuration that the basis spans:
 *       temperatures at points and candidates are interpolated between cells in a way that follows
 *       conductivities to first order only.
 *   <li>The maximum principle is not guaranteed: a temperature may overshoot those that drive it by
 *       about the error estimate.
 *   <li>Extremes may lie elsewhere than at the candidates where a run meets states unlike the
 *       random snapshots.
 * </ul>
 *
 * <p><b>Stored models.</b> {@link stenotherm.modal.ReducedModel#write} stores what runs need,
 * without the cells. {@link stenotherm.modal.ReducedModel#read} reads it, from any source; its
 * engines give the same bits. The form has version 3. Numbers are big-endian: byte, int of 4 bytes,
 * long of 8, double of 8 (IEEE 754). A text is an int, the number of its bytes, and these in UTF-8.
 * A list is an int, the number of its entries, and the entries. Positions count from 0.
 *
 * <pre>
 * long    magic number, "STENOMOD" in ASCII
 * int     version, 3
 * list    boundary ports, p of them, each:
 *           text name; byte kind (0 film, 1 held surface, 2 flux); double area [m2]
 * list    source ports, q of them, each:
 *           text name; double volume [m3]
 * list    groups of inputs that go together, each:
 *           list of int, positions of inputs, ascending; boundary ports come before source ports;
 *           each input is in exactly one group
 * double  heat capacity of the body [J/K]
 * list    text, names of the solid blocks, b of them
 * int     n, number of basis vectors
 * double  n values: coordinates of the uniform field of 1 K
 * double  n rows of b values: heat content of each solid block in each basis vector
 * list    blocks that may start apart, each:
 *           text name; n double, coordinates of the state that is 1 K there and 0 elsewhere
 * list    outputs, each:
 *           byte kind; text name; and by kind
 *           0 mean, 1 maximum, 2 minimum: text block
 *           3 point: double x, y, z [m]
 *           4 surface mean, 5 heat flow: text boundary
 * long    solver iterations that building the model took
 * list    text, names of the blocks whose conductivity varies, v of them
 * list    groups of conductances, each:
 *           int 1 + position of the boundary port that it leads to, 0 if it lies between cells
 *           int 1 + position of the first block among those that vary, 0 if it does not vary
 *           int 1 + position of the second block, likewise
 *           double of the first block: its share in the resistance [-];
 *             to a boundary the resistance of the half cells [m2 K/W]
 *           double of the second block: its share in the resistance [-];
 *             to a boundary the thin resistance [m2 K/W]
 *           to a boundary only: double area [m2]; n double, area times temperature of each vector
 *           n (n + 1) / 2 double, lower triangle of V'KV, row after row; to a boundary for a
 *             conductance of 1 W/(m2 K)
 * double  q rows of n values: what 1 W of each source gives each basis vector
 * list    configurations that the basis spans, each:
 *           p double, surface coefficients [W/(m2 K)]; v double, factors on conductivities [-]
 * int     number of candidates of each block with extremes, in the order in which the outputs name
 *         these blocks first; no count of blocks before
 * list    readings of outputs, each:
 *           v double, factors on conductivities [-]
 *           n columns of r double, one column for each basis vector; r rows: the outputs that are
 *             no extremes, in their order, then the candidates, block after block
 *           p + q columns of r double: what each input adds to these rows at once
 * list    coarser models, 0 to 2, each:
 *           list of int, positions of its basis vectors, ascending
 * long    CRC-32 of all bytes before
 * </pre>
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.modal;

import org.jspecify.annotations.NullMarked;
