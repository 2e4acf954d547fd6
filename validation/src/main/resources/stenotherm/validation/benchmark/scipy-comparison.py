#!/usr/bin/env python3
"""Solves a transient of heat conduction with NumPy and SciPy, as well as it can.

    python3 scipy-comparison.py FOLDER [--quick]

Ends with status 3 if NumPy or SciPy is missing. The folder holds problem.json:

    lines, cells        grid lines along x, y and z [m]; block number of each cell, x fastest
    blocks              name, conductivity [W/(m K)], capacity [J/(m3 K)] of each
    thin                resistances [m2 K/W] of blocks inside to those outside, or to all others
    films, ambient      tables: surface coefficients of the six faces [W/(m2 K)], the air [K]
    heated, power       name of the block that is heated evenly, table of its power [W]
    start, interval     uniform temperature at the start [K], interval of outputs [s]
    outputs, reference  blocks whose means are wanted, and what they are at each interval [K]

A table, rows of time [s] and value, is linear in between; two rows at one time are a jump, the
later one holds from then on. Coefficients change by jumps alone. Matrices, preconditioners, time
schemes and search are the script's own. It writes result.json: integrations, the best's outputs.

best      Second order in time with equal steps, no longer than an output's interval: the
          trapezoidal rule (two half steps of implicit Euler after each jump damp what it cannot)
          and TR-BDF2. Of each the longest step whose outputs lie within 0.02 K of the reference;
          conjugate gradients that start from an extrapolation, preconditioned by Jacobi or an
          incomplete LU factor, with the loosest tolerance that keeps within 0.02 K. The fastest
          of these. (The backward difference was ten to twenty times as far off at the same step.)
balanced  The same with the loosest tolerance that also closes the heat balance to 1e-6 of the heat
          that passed plus what a rise of 1 mK takes.
plain     Implicit Euler, steps of 120 s; conjugate gradients that start from the last temperatures,
          to 1e-8 of the right-hand side; the better preconditioner.
default   The same to 1e-5 of the right-hand side, which is what SciPy does unless told otherwise.
fine      TR-BDF2 at small steps, which tells how good the reference is.

Seconds are those of the integration alone, without matrices and preconditioners; of best and
balanced the least of three. --quick, for tests: no repetitions, a plain step of an interval.
"""

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
TOLERANCES = (1e-2, 5e-3, 3e-3, 2e-3, 1.5e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6, 1e-7)  # K
SEARCH_TOLERANCE = 1e-4  # K
FINE_TOLERANCE = 1e-5  # K
PRECONDITIONERS = ("Jacobi", "ILU")
# the older name of the relative tolerance is refused by newer versions of SciPy
RELATIVE = "rtol" if "rtol" in inspect.signature(linalg.cg).parameters else "tol"


class Table:
    """A function of time, linear between rows."""

    def __init__(self, rows):
        self.time, self.value = np.array(rows).T

    def at(self, t, before=False):
        """Value at a time, after a jump there or before it."""
        row = np.searchsorted(self.time, t, side="left" if before else "right") - 1
        row = min(max(row, 0), len(self.time) - 2)
        t0, t1 = self.time[row], self.time[row + 1]
        part = 1 if t1 == t0 else (t - t0) / (t1 - t0)
        return self.value[row] + part * (self.value[row + 1] - self.value[row])


class Problem:
    """The file's problem: C dT/dt = -G T + heat by finite volumes, G still without the films."""

    def __init__(self, folder):
        with open(os.path.join(folder, "problem.json"), encoding="utf-8") as file:
            about = json.load(file)
        dx, dy, dz = (np.diff(lines) for lines in about["lines"])
        dz, dy, dx = np.meshgrid(dz, dy, dx, indexing="ij")
        volume = dx * dy * dz
        block = np.array(about["cells"]).reshape(volume.shape)
        blocks = about["blocks"]
        conductivity = np.array([each["conductivity"] for each in blocks])[block]
        heat_capacity = np.array([each["capacity"] for each in blocks])[block]
        names = [each["name"] for each in blocks]
        thin = np.zeros((len(names), len(names)))
        for each in about["thin"]:
            inside = [names.index(name) for name in each["inside"]]
            outside = [names.index(name) for name in each["outside"]]
            outside = outside or [b for b in range(len(names)) if b not in inside]
            thin[np.ix_(inside, outside)] += each["resistance"]
            thin[np.ix_(outside, inside)] += each["resistance"]
        self.cells = block.size
        self.capacity = (heat_capacity * volume).ravel()
        number = np.arange(self.cells).reshape(block.shape)
        both, self.faces = sparse.csr_matrix((self.cells, self.cells)), []
        for axis, length in ((2, dx), (1, dy), (0, dz)):
            area, half = volume / length, length / (2 * conductivity)
            lower = tuple(slice(0, -1 if a == axis else None) for a in range(3))
            upper = tuple(slice(1 if a == axis else 0, None) for a in range(3))
            resistance = half[lower] + thin[block[lower], block[upper]] + half[upper]
            pairs = (number[lower].ravel(), number[upper].ravel())
            one_way = sparse.coo_matrix(((area[lower] / resistance).ravel(), pairs), both.shape)
            both = both + one_way + one_way.T
            for end in (0, -1):
                self.faces.append([np.take(a, end, axis).ravel() for a in (number, area, half)])
        self.inner = (sparse.diags(np.asarray(both.sum(axis=1)).ravel()) - both).tocsr()
        volumes = {name: (volume * (block == b)).ravel() for b, name in enumerate(names)}
        share = {name: each / each.sum() for name, each in volumes.items() if each.any()}
        self.heated, self.power = share[about["heated"]], Table(about["power"])
        self.film, self.ambient = [Table(rows) for rows in about["films"]], Table(about["ambient"])
        self.start, self.interval = about["start"], about["interval"]
        self.weight = np.array([share[name] for name in about["outputs"]])
        self.reference = np.array(about["reference"]).T
        self.intervals = len(self.reference) - 1

    def films(self, t):
        """Surface coefficients that hold from a time on."""
        return tuple(film.at(t) for film in self.film)

    def inputs(self, t, limit):
        """Ambient temperature and power at a time, or their limit from earlier times."""
        return np.array([self.ambient.at(t, limit), self.power.at(t, limit)])

    def jumps(self, t):
        """Tells whether anything jumps at a time; the start counts."""
        tables = [self.ambient, self.power] + self.film
        return t == 0 or any(table.at(t) != table.at(t, True) for table in tables)


class Films:
    """The matrix G under surface coefficients, and the heat of each input."""

    def __init__(self, problem, coefficients):
        self.to_boundaries = np.zeros(problem.cells)
        for (cell, area, resistance), h in zip(problem.faces, coefficients):
            self.to_boundaries[cell] += area / (resistance + 1 / h)
        self.conductance = (problem.inner + sparse.diags(self.to_boundaries)).tocsr()
        self.heat = np.array([self.to_boundaries, problem.heated]).T


class Solver:
    """Conjugate gradients for one matrix."""

    def __init__(self, matrix, preconditioner, tolerance):
        """The tolerance is a uniform error [K], or relative to the right-hand side if negative."""
        self.iterations, self.scale, self.inverse = 0, None, None
        if preconditioner == "Jacobi":
            # scaling both sides is the same and needs no call back
            self.scale = 1 / np.sqrt(matrix.diagonal())
            matrix = (sparse.diags(self.scale) @ matrix @ sparse.diags(self.scale)).tocsr()
        else:
            # other rules of dropping leave factors so lopsided that the iteration stalls
            rules = {"drop_tol": 1e-2, "fill_factor": 3, "drop_rule": "basic"}
            order = {"permc_spec": "MMD_AT_PLUS_A", "diag_pivot_thresh": 0}
            symmetric = {"SymmetricMode": True}
            factor = linalg.spilu(matrix.tocsc(), **rules, **order, options=symmetric)
            self.inverse = linalg.LinearOperator(matrix.shape, factor.solve)
        self.matrix = matrix
        uniform = np.ones(matrix.shape[0]) if self.scale is None else 1 / self.scale
        # the residual that a uniform error would leave
        residual = np.linalg.norm(matrix @ uniform)
        self.stop = {"atol": max(tolerance, 0) * residual, RELATIVE: max(-tolerance, 0)}

    def solve(self, right, guess):
        if self.scale is not None:
            right, guess = right * self.scale, guess / self.scale
        options = {"maxiter": 2000, "M": self.inverse, "callback": self.count}
        x, failed = linalg.cg(self.matrix, right, x0=guess, **options, **self.stop)
        if failed:
            raise RuntimeError("conjugate gradients did not converge")
        return x if self.scale is None else x * self.scale

    def count(self, _):
        self.iterations += 1


class Euler:
    name, factor = "implicit Euler", 1

    def step(self, run, t, dt):
        right = run.storage * run.state + run.heat(t + dt, True)
        run.accept(run.solver.solve(right, run.state), 1)
        run.account(dt, run.state, t + dt, True)


class Trapezoidal:
    name, factor = "trapezoidal", 2

    def step(self, run, t, dt):
        if run.problem.jumps(t):
            for half in (0.5, 1.0):
                right = run.storage * run.state + run.heat(t + half * dt, True)
                run.accept(run.solver.solve(right, run.guess(0.5)), 0.5)
                run.account(dt / 2, run.state, t + half * dt, True)
        else:
            old = run.state
            right = run.storage * old - run.films.conductance @ old
            right += run.heat(t, False) + run.heat(t + dt, True)
            run.accept(run.solver.solve(right, run.guess(1)), 1)
            run.account(dt / 2, old, t, False)
            run.account(dt / 2, run.state, t + dt, True)


class TrBdf2:
    name, part = "TR-BDF2", 2 - 2**0.5
    factor = 2 / part

    def step(self, run, t, dt):
        g, old = self.part, run.state
        right = run.storage * old - run.films.conductance @ old
        right += run.heat(t, False) + run.heat(t + g * dt, True)
        middle = run.solver.solve(right, run.guess(g))
        # (2 - g) / (1 - g) equals 2 / g
        mixture = (middle / (g * (1 - g)) - old * ((1 - g) / g)) * (g / 2)
        right = run.storage * mixture + run.heat(t + dt, True)
        run.accept(run.solver.solve(right, old + (middle - old) / g), 1)
        run.account(dt * 2**0.5 / 4, old, t, False)
        run.account(dt * 2**0.5 / 4, middle, t + g * dt, True)
        run.account(dt * g / 2, run.state, t + dt, True)


class Run:
    """One integration from the start, to the end unless only some intervals are asked for."""

    def __init__(
        self, problem, scheme, division, preconditioner, tolerance, balance=False, intervals=None
    ):
        self.problem, self.scheme, self.division = problem, scheme(), division
        self.preconditioner, self.tolerance = preconditioner, tolerance
        intervals = intervals or problem.intervals
        self.dt = problem.interval / division
        self.steps = division * intervals
        self.moved = self.passed = 0.0 if balance else None
        start = time.process_time()
        self.films_at = {}
        self.storage = self.scheme.factor / self.dt * problem.capacity
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
        what = (self.problem, type(self.scheme), self.division, self.preconditioner)
        return Run(*what, self.tolerance if tolerance is None else tolerance, balance)


def first(runs, closes=False):
    """The first run that is accurate enough and, if asked for, closes the heat balance, or None."""
    for run in runs:
        if run.error <= ALLOWED and not (closes and run.imbalance() > ALLOWED_IMBALANCE):
            return run
    return None


def fastest(runs):
    return min(runs, key=lambda run: run.processor)


def main():
    folder, quick = sys.argv[1], "--quick" in sys.argv[2:]
    problem = Problem(folder)
    candidates = []
    for scheme in (Trapezoidal, TrBdf2):
        # the longest step that is accurate enough, then for it the loosest tolerance
        steps = (Run(problem, scheme, d, "Jacobi", SEARCH_TOLERANCE) for d in DIVISIONS)
        division = first(steps).division
        for preconditioner in PRECONDITIONERS:
            run = first(Run(problem, scheme, division, preconditioner, t) for t in TOLERANCES)
            if run is not None:
                candidates.append(("tried", run, None))
    best = fastest([run for _, run, _ in candidates])
    again = 0 if quick else 2
    tighter = (best.same(t, balance=True) for t in TOLERANCES if t <= best.tolerance)
    closing = first(tighter, closes=True)
    bests = [best] + [best.same() for _ in range(again)]
    rows = [("best", fastest(bests), best.same(balance=True).imbalance())]
    # without the accounting
    closings = [best.same(closing.tolerance) for _ in range(1 + again)]
    rows.append(("balanced", fastest(closings), closing.imbalance()))
    division = 1 if quick else round(problem.interval / PLAIN_STEP)
    # the first intervals tell which preconditioner is the better one
    trials = [Run(problem, Euler, division, p, -1e-8, intervals=TRIAL) for p in PRECONDITIONERS]
    plain = Run(problem, Euler, division, fastest(trials).preconditioner, -1e-8)
    for name, run in (("plain", plain), ("default", plain.same(-1e-5))):
        rows.append((name, run, run.same(balance=True).imbalance()))
    fine = Run(problem, TrBdf2, FINE_DIVISION, "Jacobi", FINE_TOLERANCE)
    rows.append(("fine", fine, None))
    numeric = f"NumPy {np.__version__}, SciPy {scipy.__version__}"
    result = {
        "versions": f"Python {platform.python_version()}, {numeric}",
        "runs": [row(*each) for each in rows + candidates],
        "best": rows[0][1].values.T.tolist(),
    }
    with open(os.path.join(folder, "result.json"), "w", encoding="utf-8") as file:
        json.dump(result, file)


def row(name, run, imbalance):
    """What the other program reads of a run, and what it shows of it."""
    unit = f"{run.tolerance:g} K" if run.tolerance > 0 else f"{-run.tolerance:g} relative"
    shown = [run.scheme.name, f"{run.dt:.0f} s", f"{run.preconditioner}, {unit}"]
    shown += [f"{run.steps:,d}", f"{run.iterations:,d}", f"{run.setup:.2f}"]
    shown += [f"{run.processor:.2f}", f"{run.wall:.2f}", f"{run.error:.4f}"]
    shown += ["" if imbalance is None else f"{imbalance:.0e}"]
    return {"name": name, "processor": run.processor, "error": run.error, "row": shown}


if __name__ == "__main__":
    main()
