#!/usr/bin/env python3
"""Solves a transient of heat conduction with NumPy and SciPy, as well as it can.

    python3 scipy-comparison.py FOLDER [--quick]

Ends with status 3 if NumPy or SciPy is missing.

The folder holds a problem, C dT/dt = -G T + heat, as numbers. Arrays are NPY files.

    problem.json              cells, number of boundaries and sources, names of outputs, uniform
                              temperature at the start [K], interval of outputs and end [s]
    capacity                  heat capacity of each cell [J/K]
    coupling-first, -second   the two cells of each pair of neighbours
    coupling-conductance      conductance between them [W/K]
    boundary-N-cell           cell behind each face of boundary N; then of each of these faces
    boundary-N-area           its area [m2]
    boundary-N-resistance     resistance of unit area between cell and film [m2 K/W]
    boundary-N-coefficient    table: time [s], surface coefficient [W/(m2 K)]
    boundary-N-ambient        table: time [s], temperature behind the film [K]
    source-N-cell, -share     cells that source N heats, part of its power that each gets
    source-N-power            table: time [s], power [W]
    output-N-cell, -share     cells of an output, weight of each in the mean
    reference                 what the outputs are, a row for each of their times [K]

A table is linear between its rows; two rows at one time are a jump, the later one holds from then
on. Coefficients change by jumps alone.

Matrices, preconditioners, time schemes and search are the script's own. It writes

    runs.csv       a row for each integration that counts
    outputs.csv    outputs of the best and of the plain integration, a row for each time [K]
    versions.txt   of Python, NumPy and SciPy

best      Second order in time with equal steps, no longer than an output's interval: the
          trapezoidal rule (with two half steps of implicit Euler after each jump, which damp what
          the rule cannot) and TR-BDF2. Of each the longest step whose outputs lie within 0.02 K of
          the reference; conjugate gradients that start from an extrapolation, preconditioned by
          Jacobi or an incomplete LU factor, with the loosest tolerance that keeps within 0.02 K.
          The fastest of these. (The backward difference, carried across jumps, was ten to twenty
          times as far off at the same step.)
balanced  The same with the loosest tolerance that also closes the heat balance to 1e-6 of the heat
          that passed plus what a rise of 1 mK takes.
plain     Implicit Euler, steps of 120 s; conjugate gradients that start from the last temperatures,
          to 1e-8 of the right-hand side; the better preconditioner.
default   The same to 1e-5 of the right-hand side, which is what SciPy does unless told otherwise.
fine      TR-BDF2 at small steps, which tells how good the reference is.

Seconds are those of the integration alone, without the making of matrices and preconditioners; of
best and balanced the least of three. --quick, for tests: no repetitions, a plain step of an output's interval.
"""

import csv
import inspect
import json
import os
import platform
import sys
import time

# one thread, as the other program has; must be set before NumPy is loaded
for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"

try:
    import numpy as np
    import scipy
    import scipy.sparse as sparse
    import scipy.sparse.linalg as linalg
except ImportError as missing:
    print(missing, file=sys.stderr)
    sys.exit(3)

ALLOWED = 0.02  # K
ALLOWED_IMBALANCE = 1e-6
PLAIN_STEP = 120.0  # s
FINE_DIVISION = 24
TRIAL = 3  # intervals
DIVISIONS = (1, 2, 3, 4, 5, 6, 8, 9, 10, 12, 15, 16, 18, 20, 24, 30)  # steps per interval
TOLERANCES = (1e-2, 5e-3, 3e-3, 2e-3, 1.5e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6, 1e-7)  # K, from loose to tight
SEARCH_TOLERANCE = 1e-4  # K
FINE_TOLERANCE = 1e-5  # K
PRECONDITIONERS = ("Jacobi", "ILU")
# the older name of the relative tolerance is refused by newer versions of SciPy
RELATIVE = "rtol" if "rtol" in inspect.signature(linalg.cg).parameters else "tol"


class Table:
    """A function of time, linear between rows."""

    def __init__(self, rows):
        self.time = rows[:, 0]
        self.value = rows[:, 1]

    def at(self, t):
        """Value at a time, after a jump there."""
        row = np.searchsorted(self.time, t, side="right") - 1
        return self._between(min(row, len(self.time) - 2), t)

    def before(self, t):
        """Limit from earlier times."""
        row = np.searchsorted(self.time, t, side="left") - 1
        return self._between(max(row, 0), t)

    def _between(self, row, t):
        t0, t1 = self.time[row], self.time[row + 1]
        if t1 == t0:
            return self.value[row + 1]
        part = (t - t0) / (t1 - t0)
        return self.value[row] + part * (self.value[row + 1] - self.value[row])


class Problem:
    """What the folder says."""

    def __init__(self, folder):
        def array(name):
            return np.load(os.path.join(folder, name + ".npy"))

        with open(os.path.join(folder, "problem.json"), encoding="utf-8") as file:
            about = json.load(file)
        self.cells = about["cells"]
        self.start = about["start"]
        self.interval = about["interval"]
        self.intervals = round(about["end"] / self.interval)
        self.outputs = about["outputs"]
        self.capacity = array("capacity")
        first, second = array("coupling-first"), array("coupling-second")
        between = array("coupling-conductance")
        shape = (self.cells, self.cells)
        one_way = sparse.coo_matrix((between, (first, second)), shape=shape).tocsr()
        both = one_way + one_way.T
        self.inner = (sparse.diags(np.asarray(both.sum(axis=1)).ravel()) - both).tocsr()
        self.boundary = []
        for n in range(about["boundaries"]):
            keys = ("cell", "area", "resistance", "coefficient", "ambient")
            cell, area, resistance, film, ambient = (array(f"boundary-{n}-{key}") for key in keys)
            self.boundary.append((cell, area, resistance, Table(film), Table(ambient)))
        self.source = []
        for n in range(about["sources"]):
            share = np.zeros(self.cells)
            np.add.at(share, array(f"source-{n}-cell"), array(f"source-{n}-share"))
            self.source.append((share, Table(array(f"source-{n}-power"))))
        self.weight = np.zeros((len(self.outputs), self.cells))
        for n in range(len(self.outputs)):
            self.weight[n, array(f"output-{n}-cell")] = array(f"output-{n}-share")
        self.reference = array("reference")

    def films(self, t):
        """Surface coefficients that hold from a time on."""
        return tuple(film.at(t) for _, _, _, film, _ in self.boundary)

    def inputs(self, t, limit):
        """Ambient temperatures and powers at a time, or their limit from earlier times."""
        tables = [b[4] for b in self.boundary] + [power for _, power in self.source]
        return np.array([table.before(t) if limit else table.at(t) for table in tables])

    def jumps(self, t):
        """Tells whether anything jumps at a time; the start counts."""
        tables = [table for b in self.boundary for table in b[3:]] + [p for _, p in self.source]
        return t == 0 or any(table.at(t) != table.before(t) for table in tables)


class Films:
    """The matrix G under surface coefficients, and the heat of each input."""

    def __init__(self, problem, coefficients):
        diagonal = np.zeros(problem.cells)
        columns = []
        for (cell, area, resistance, _, _), h in zip(problem.boundary, coefficients):
            column = np.zeros(problem.cells)
            np.add.at(column, cell, area / (resistance + 1 / h))
            diagonal += column
            columns.append(column)
        self.to_boundaries = diagonal
        self.conductance = (problem.inner + sparse.diags(diagonal)).tocsr()
        columns += [share for share, _ in problem.source]
        self.heat = sparse.csr_matrix(np.array(columns)).T.tocsr()


class Solver:
    """Conjugate gradients for one matrix."""

    def __init__(self, matrix, preconditioner, tolerance):
        """The tolerance is a uniform error [K], or relative to the right-hand side if negative."""
        self.iterations = 0
        self.scale = None
        self.inverse = None
        if preconditioner == "Jacobi":
            # scaling both sides is the same and needs no call back
            self.scale = 1 / np.sqrt(matrix.diagonal())
            scaling = sparse.diags(self.scale)
            matrix = (scaling @ matrix @ scaling).tocsr()
        else:
            # other rules of dropping leave factors so lopsided that the iteration stalls
            factor = linalg.spilu(
                matrix.tocsc(),
                drop_tol=1e-2,
                fill_factor=3,
                drop_rule="basic",
                permc_spec="MMD_AT_PLUS_A",
                diag_pivot_thresh=0,
                options={"SymmetricMode": True},
            )
            self.inverse = linalg.LinearOperator(matrix.shape, factor.solve)
        self.matrix = matrix
        uniform = np.ones(matrix.shape[0]) if self.scale is None else 1 / self.scale
        # the residual that a uniform error would leave
        residual = np.linalg.norm(matrix @ uniform)
        self.stop = {"atol": max(tolerance, 0) * residual, RELATIVE: max(-tolerance, 0)}

    def solve(self, right, guess):
        if self.scale is not None:
            right = right * self.scale
            guess = guess / self.scale
        x, failed = linalg.cg(
            self.matrix,
            right,
            x0=guess,
            maxiter=2000,
            M=self.inverse,
            callback=self._count,
            **self.stop,
        )
        if failed:
            raise RuntimeError("conjugate gradients did not converge")
        return x if self.scale is None else x * self.scale

    def _count(self, _):
        self.iterations += 1


class Euler:
    name = "implicit Euler"

    def factor(self, dt):
        return 1 / dt

    def step(self, run, t, dt):
        right = run.held(run.state) + run.heat(t + dt, True)
        run.accept(run.solver.solve(right, run.state), 1)
        run.account(dt, run.state, t + dt, True)


class Trapezoidal:
    name = "trapezoidal"

    def factor(self, dt):
        return 2 / dt

    def step(self, run, t, dt):
        if run.problem.jumps(t):
            for half in (0.5, 1.0):
                right = run.held(run.state) + run.heat(t + half * dt, True)
                run.accept(run.solver.solve(right, run.guess(0.5)), 0.5)
                run.account(dt / 2, run.state, t + half * dt, True)
        else:
            old = run.state
            right = run.held(old) - run.films.conductance @ old
            right += run.heat(t, False) + run.heat(t + dt, True)
            run.accept(run.solver.solve(right, run.guess(1)), 1)
            run.account(dt / 2, old, t, False)
            run.account(dt / 2, run.state, t + dt, True)


class TrBdf2:
    name = "TR-BDF2"
    part = 2 - 2**0.5

    def factor(self, dt):
        return 2 / (self.part * dt)

    def step(self, run, t, dt):
        g = self.part
        old = run.state
        right = run.held(old) - run.films.conductance @ old
        right += run.heat(t, False) + run.heat(t + g * dt, True)
        middle = run.solver.solve(right, run.guess(g))
        # (2 - g) / (1 - g) equals 2 / g
        mixture = (middle / (g * (1 - g)) - old * ((1 - g) / g)) * (g / 2)
        right = run.held(mixture) + run.heat(t + dt, True)
        run.accept(run.solver.solve(right, old + (middle - old) / g), 1)
        run.account(dt * 2**0.5 / 4, old, t, False)
        run.account(dt * 2**0.5 / 4, middle, t + g * dt, True)
        run.account(dt * g / 2, run.state, t + dt, True)


class Run:
    """One integration from the start, to the end unless only some intervals are asked for."""

    def __init__(
        self, problem, scheme, division, preconditioner, tolerance, balance=False, intervals=None
    ):
        self.problem = problem
        intervals = intervals or problem.intervals
        self.scheme = scheme()
        self.dt = problem.interval / division
        self.steps = division * intervals
        self.division = division
        self.preconditioner = preconditioner
        self.tolerance = tolerance
        self.moved = self.passed = 0.0 if balance else None
        start = time.process_time()
        self.films_at = {}
        factor = self.scheme.factor(self.dt)
        self.storage = factor * problem.capacity
        for index in range(intervals):
            h = problem.films(index * problem.interval)
            if h not in self.films_at:
                films = Films(problem, h)
                matrix = (films.conductance + sparse.diags(self.storage)).tocsr()
                self.films_at[h] = (films, Solver(matrix, preconditioner, tolerance))
        self.setup = time.process_time() - start
        wall, start = time.perf_counter(), time.process_time()
        self.state = np.full(problem.cells, problem.start)
        self.rate = np.zeros(problem.cells)
        self.values = [problem.weight @ self.state]
        for index in range(self.steps):
            if index % division == 0:
                self.films, self.solver = self.films_at[problem.films(index * self.dt)]
            self.scheme.step(self, index * self.dt, self.dt)
            if (index + 1) % division == 0:
                self.values.append(problem.weight @ self.state)
        self.processor = time.process_time() - start
        self.wall = time.perf_counter() - wall
        self.values = np.array(self.values)
        self.error = np.abs(self.values - problem.reference[: intervals + 1]).max()
        self.iterations = sum(solver.iterations for _, solver in self.films_at.values())

    def held(self, state):
        return self.storage * state

    def heat(self, t, limit):
        return self.films.heat @ self.problem.inputs(t, limit)

    def guess(self, part):
        """Extrapolation by a part of a step."""
        return self.state + part * self.rate

    def accept(self, state, part):
        self.rate = (state - self.state) / part
        self.state = state

    def account(self, weight, state, t, limit):
        """Adds what passes in a state to the heat balance, if there is one."""
        if self.moved is not None:
            net = self.heat(t, limit).sum() - self.films.to_boundaries @ state
            self.moved += weight * net
            self.passed += weight * abs(net)

    def imbalance(self):
        """Part of the heat that the balance does not know of."""
        stored = self.problem.capacity @ (self.state - self.problem.start)
        return abs(stored - self.moved) / (self.passed + 1e-3 * self.problem.capacity.sum())

    def same(self, tolerance=None, balance=False):
        """The same once more, or with another tolerance."""
        scheme = type(self.scheme)
        tolerance = self.tolerance if tolerance is None else tolerance
        return Run(
            self.problem, scheme, self.division, self.preconditioner, tolerance, balance
        )


def longest_step(problem, scheme):
    """Steps per interval of the longest step that is accurate enough."""
    for division in DIVISIONS:
        if Run(problem, scheme, division, "Jacobi", SEARCH_TOLERANCE).error <= ALLOWED:
            return division
    raise RuntimeError(f"no step of {scheme.name} is within {ALLOWED} K")


def loosest(problem, scheme, division, preconditioner):
    """The run with the loosest tolerance that is accurate enough; None if there is none."""
    for tolerance in TOLERANCES:
        run = Run(problem, scheme, division, preconditioner, tolerance)
        if run.error <= ALLOWED:
            return run
    return None


def balanced(best):
    """The best run with the loosest tolerance that closes the balance, without the accounting."""
    for tolerance in TOLERANCES:
        if tolerance <= best.tolerance:
            run = best.same(tolerance, balance=True)
            if run.error <= ALLOWED and run.imbalance() <= ALLOWED_IMBALANCE:
                return best.same(tolerance), run.imbalance()
    raise RuntimeError("no tolerance closes the heat balance")


def fastest(runs):
    return min(runs, key=lambda run: run.processor)


def again(run, times):
    """The fastest of some runs of the same."""
    return fastest([run] + [run.same() for _ in range(times)])


def main():
    folder = sys.argv[1]
    quick = "--quick" in sys.argv[2:]
    problem = Problem(folder)
    candidates = []
    for scheme in (Trapezoidal, TrBdf2):
        division = longest_step(problem, scheme)
        for preconditioner in PRECONDITIONERS:
            run = loosest(problem, scheme, division, preconditioner)
            if run is not None:
                candidates.append(("tried", run, None))
                print(scheme.name, preconditioner, f"{run.processor:.2f} s", flush=True)
    best = fastest([run for _, run, _ in candidates])
    repetitions = 0 if quick else 2
    closing, imbalance = balanced(best)
    rows = [("best", again(best, repetitions), best.same(balance=True).imbalance())]
    rows.append(("balanced", again(closing, repetitions), imbalance))
    division = 1 if quick else round(problem.interval / PLAIN_STEP)
    # the first intervals tell which preconditioner is the better one
    trials = [Run(problem, Euler, division, p, -1e-8, intervals=TRIAL) for p in PRECONDITIONERS]
    plain = Run(problem, Euler, division, fastest(trials).preconditioner, -1e-8)
    for name, run in (("plain", plain), ("default", plain.same(-1e-5))):
        rows.append((name, run, run.same(balance=True).imbalance()))
        print(name, run.preconditioner, f"{run.processor:.2f} s", flush=True)
    fine = Run(problem, TrBdf2, FINE_DIVISION, "Jacobi", FINE_TOLERANCE)
    rows.append(("fine", fine, None))
    write(folder, rows + candidates)


def write(folder, rows):
    with open(os.path.join(folder, "runs.csv"), "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(
            "run,scheme,preconditioner,tolerance,step_s,steps,iterations,setup_s,processor_s,"
            "wall_s,error_K,imbalance".split(",")
        )
        for name, run, imbalance in rows:
            tolerance = (
                f"{run.tolerance:g} K" if run.tolerance > 0 else f"{-run.tolerance:g} relative"
            )
            writer.writerow(
                [name, run.scheme.name, run.preconditioner, tolerance]
                + [f"{run.dt:g}", run.steps, run.iterations, f"{run.setup:.4f}"]
                + [f"{run.processor:.4f}", f"{run.wall:.4f}", f"{run.error:.6f}"]
                + ["" if imbalance is None else f"{imbalance:.3e}"]
            )
    runs = {name: run for name, run, _ in rows if name in ("best", "plain")}
    problem = runs["best"].problem
    with open(os.path.join(folder, "outputs.csv"), "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        names = [f"{name} {output}" for name in runs for output in problem.outputs]
        writer.writerow(["time_s"] + names)
        for row in range(problem.intervals + 1):
            values = [f"{value:.9f}" for run in runs.values() for value in run.values[row]]
            writer.writerow([f"{row * problem.interval:g}"] + values)
    with open(os.path.join(folder, "versions.txt"), "w", encoding="utf-8") as file:
        file.write(
            f"Python {platform.python_version()}, NumPy {np.__version__}, SciPy"
            f" {scipy.__version__}\n"
        )


if __name__ == "__main__":
    main()
