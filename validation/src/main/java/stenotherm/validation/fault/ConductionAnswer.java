package stenotherm.validation.fault;

import static stenotherm.validation.fault.Agreement.near;
import static stenotherm.validation.fault.Agreement.same;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/**
 * Small bodies whose answer is known in closed form, exact for the scheme. Each stands for one way
 * in which conduction could be wrong.
 *
 * <p>Internal. Thread-safe.
 */
enum ConductionAnswer implements KnownAnswer {
  /** Steady flux through two layers: the temperature difference over the sum of L / k. */
  LAYERS_IN_SERIES {
    @Override
    public void check() {
      SteadySolution solution = SteadySolver.solve(heldWall(0));
      same(
          "flux",
          40 / (0.03 / 0.04 + 0.05 / 2),
          solution.heatFlows().getOrDefault("xMin", Double.NaN),
          SOLVED);
    }
  },

  /** The same with a thin resistance between the layers. */
  THIN_RESISTANCE_BETWEEN_LAYERS {
    @Override
    public void check() {
      SteadySolution solution = SteadySolver.solve(heldWall(0.5));
      same(
          "flux",
          40 / (0.03 / 0.04 + 0.5 + 0.05 / 2),
          solution.heatFlows().getOrDefault("xMin", Double.NaN),
          SOLVED);
    }
  },

  /** Thin resistances on a surface that is under a film, and on one that is held. */
  THIN_RESISTANCE_ON_SURFACES {
    @Override
    public void check() {
      ConductionProblem problem =
          ConductionProblem.builder(slab(1), MeshControl.uniform(0.01))
              .boundary(Face.X_MIN, Boundary.Convection.of(10, 310))
              .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(280))
              .thinResistance(ThinResistance.around(Set.of("slab"), 0.4))
              .build();
      double flux = 30 / (0.1 + 0.4 + 0.1 / 1 + 0.4);
      same(
          "flux",
          flux,
          SteadySolver.solve(problem).heatFlows().getOrDefault("xMin", Double.NaN),
          SOLVED);
    }
  },

  /** Heat flows into a body from a film that is warmer, out of it to one that is colder. */
  DIRECTION_OF_FILM_HEAT {
    @Override
    public void check() {
      SteadySolution solution = SteadySolver.solve(filmedSlab());
      double flux = 30 / (1.0 / 10 + 0.1 / 1 + 1.0 / 20);
      same(
          "flux at the warm side",
          flux,
          solution.heatFlows().getOrDefault("xMin", Double.NaN),
          SOLVED);
      same(
          "flux at the cold side",
          -flux,
          solution.heatFlows().getOrDefault("xMax", Double.NaN),
          SOLVED);
    }
  },

  /** Surface temperatures between two films: what the film's resistance leaves. */
  SURFACE_UNDER_FILM {
    @Override
    public void check() {
      SteadySolution solution = SteadySolver.solve(filmedSlab());
      double flux = 30 / (1.0 / 10 + 0.1 / 1 + 1.0 / 20);
      same("warm surface", 310 - flux / 10, solution.field().surfaceMean("xMin"), SOLVED);
      same("cold surface", 280 + flux / 20, solution.field().at(new Point(0.1, 0.5, 0.5)), SOLVED);
      same("maximum", 310 - flux / 10, solution.field().maximum("slab"), SOLVED);
    }
  },

  /** The area of a brick in a room, and what passes it. */
  SURFACE_OF_BRICK_IN_ROOM {
    @Override
    public void check() {
      Box brick = new Box(new Point(0.1, 0.1, 0.1), new Point(0.3, 0.4, 0.5));
      ConductionProblem problem =
          inRoom(new Block.Solid("body", brick, STONE)).source("body", constant(6)).build();
      double area = 2 * (0.2 * 0.3 + 0.3 * 0.4 + 0.4 * 0.2);
      same("area", area, area(problem), 1e-12);
      double surface = SteadySolver.solve(problem).field().surfaceMean("room");
      same("mean surface", 290 + 6 / (8 * area), surface, SOLVED);
    }
  },

  /** The area of a round rod across a room: its circumference, not that of its steps. */
  SURFACE_OF_ROD_IN_ROOM {
    @Override
    public void check() {
      Box around = new Box(new Point(0.1, 0.1, 0), new Point(0.3, 0.3, 0.6));
      ConductionProblem problem =
          inRoom(new Block.Solid("body", around, STONE, Shape.CYLINDER_Z))
              .source("body", constant(6))
              .build();
      double area = Math.PI * 0.2 * 0.6;
      // every piece of the surface belongs to just one step along each axis
      same("area", area, area(problem), 1e-5);
      double surface = SteadySolver.solve(problem).field().surfaceMean("room");
      same("mean surface", 290 + 6 / (8 * area), surface, 1e-4);
    }
  },

  /** A heated block that loses nothing warms by power times time over heat capacity. */
  HEAT_CAPACITY {
    @Override
    public void check() {
      double capacity = 2e6 * 0.2 * 0.3 * 0.4;
      ConductionProblem problem = insulatedBlock();
      same("heat capacity", capacity, problem.network().totalCapacity(), 1e-12);
      TransientSolution solution = run(problem, IntegratorSettings.standard(), 5000);
      same("mean", 290 + 24 * 5000 / capacity, solution.last("mean"), 1e-9);
    }
  },

  /** What a run stores, by the ledger and by its own mean temperature. */
  STORED_HEAT {
    @Override
    public void check() {
      TransientSolution solution = run(insulatedBlock(), IntegratorSettings.standard(), 5000);
      double stored = 2e6 * 0.2 * 0.3 * 0.4 * (solution.last("mean") - 290);
      same("stored heat by mean", 24.0 * 5000, stored, 1e-9);
      same("stored heat by ledger", 24.0 * 5000, solution.ledger().stored(), 1e-9);
    }
  },

  /** A slab whose inner half is heated: heat flows out through the other half only. */
  PLACE_OF_SOURCE {
    @Override
    public void check() {
      Layout layout =
          new Layout(
              List.of(
                  new Block.Solid("heated", Box.ofSize(0.1, 1, 1), STONE),
                  new Block.Solid(
                      "idle", new Box(new Point(0.04, 0, 0), new Point(0.1, 1, 1)), STONE)));
      ConductionProblem problem =
          ConductionProblem.builder(layout, MeshControl.graded(0.01, 0.003))
              .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(290))
              .source("heated", constant(50))
              .build();
      double between = SteadySolver.solve(problem).field().at(new Point(0.04, 0.5, 0.5));
      same("between the halves", 290 + 50 * 0.06 / 1.5, between, SOLVED);
    }
  },

  /** One step after a jump of the ambient has an error of the third order in the step. */
  STEP_AFTER_JUMP {
    @Override
    public void check() {
      double rate = 10 / (1 + 10 * 0.05 / 100) / (2e6 * 0.1);
      double[] errors = new double[3];
      for (int halving = 0; halving < errors.length; halving++) {
        double step = 4000.0 / (1 << halving);
        ConductionProblem problem =
            ConductionProblem.builder(slab(100), new MeshControl(1, 1, MeshControl.DEFAULT_GROWTH))
                .boundary(
                    Face.X_MIN,
                    new Boundary.Convection(
                        constant(10),
                        TimeFunction.table(
                            new double[] {0, 1000, 1000}, new double[] {290, 290, 320})))
                .initial(290)
                .build();
        IntegratorSettings settings = IntegratorSettings.fixed(Scheme.TR_BDF2, step);
        double exact = 320 - 30 * Math.exp(-rate * step);
        errors[halving] = Math.abs(run(problem, settings, 1000, 1000 + step).last("mean") - exact);
      }
      for (int halving = 0; halving < 2; halving++) {
        double order = Math.log(errors[halving] / errors[halving + 1]) / Math.log(2);
        // the next order's term: the series of the exponential in rate times step, 0.2 to 0.05
        near("order of the first step", 3, order, 0.25);
      }
    }
  },

  /** The heat that a source gives by a table is the table's integral, whatever the steps. */
  HEAT_OF_TABLE {
    @Override
    public void check() {
      TimeFunction power =
          TimeFunction.table(
              new double[] {0, 700, 700, 1900, 4000}, new double[] {0, 14, 50, 2, 30});
      ConductionProblem problem =
          ConductionProblem.builder(slab(1), MeshControl.uniform(0.02))
              .boundary(Face.X_MIN, Boundary.Convection.of(10, 290))
              .source("slab", power)
              .initial(290)
              .build();
      double heat = 7 * 700 + 26 * 1200 + 16 * 2100;
      for (IntegratorSettings settings :
          List.of(IntegratorSettings.standard(), IntegratorSettings.fixed(Scheme.TR_BDF2, 1000))) {
        HeatLedger ledger = run(problem, settings, 4000).ledger();
        same("heat of the source", heat, ledger.sources().getOrDefault("slab", 0.0), 1e-9);
      }
    }
  },

  /** What a pack takes while it melts it gives back while it freezes. */
  MELTING_AND_FREEZING {
    @Override
    public void check() {
      Melting melting = new Melting(new Range(300, 300), 2e5, 1, 1000);
      Material pack =
          Material.of("pack", 1, 1000, 1000).withBehaviour(new Behaviour.Melts(melting));
      TimeFunction ambient =
          TimeFunction.table(new double[] {0, 100_000, 100_000}, new double[] {340, 340, 290});
      ConductionProblem problem =
          ConductionProblem.builder(slab(pack), MeshControl.uniform(0.02))
              .boundary(Face.X_MIN, new Boundary.Convection(constant(50), ambient))
              .initial(290)
              .build();
      double latent = 2e5 * 1000 * 0.1;
      double sensible = 1000 * 1000 * 0.1 * 50;
      IntegratorSettings settings = IntegratorSettings.adaptive(0.05);
      double taken =
          run(problem, settings, 100_000).ledger().boundaries().getOrDefault("xMin", Double.NaN);
      // after 100 000 s the pack is as warm as its surroundings but for 1 %
      same("heat taken", latent + sensible, taken, 1e-2);
      TransientSolution back = run(problem, settings, 100_000, 400_000);
      near(
          "heat kept",
          0,
          back.ledger().boundaries().getOrDefault("xMin", Double.NaN),
          1e-2 * latent);
      near("mean", 290, back.last("mean"), 0.5);
    }
  },

  /**
   * The ledger's residual shows the round-off of many steps, because each of its parts is summed up
   * on its own. If boundary heat were taken as the difference of the others, only the round-off of
   * one subtraction would be left.
   */
  LEDGER_IS_NO_DIFFERENCE {
    @Override
    public void check() {
      double largest = 0;
      for (int film = 1; film <= 5; film++) {
        ConductionProblem problem =
            ConductionProblem.builder(slab(1), MeshControl.uniform(0.01))
                .boundary(Face.X_MIN, Boundary.Convection.of(7 * film, 310.7))
                .boundary(Face.X_MAX, Boundary.Convection.of(13, 281.3))
                .source("slab", constant(3.7))
                .initial(290)
                .build();
        HeatLedger ledger = run(problem, IntegratorSettings.standard(), 30_000).ledger();
        if (!ledger.closes()) {
          throw new IllegalStateException("the ledger does not close: " + ledger);
        }
        double[] terms = {
          ledger.stored(),
          ledger.boundaries().getOrDefault("xMin", 0.0),
          ledger.boundaries().getOrDefault("xMax", 0.0)
        };
        double roundOff = Math.ulp(Arrays.stream(terms).map(Math::abs).max().orElse(0));
        largest = Math.max(largest, Math.abs(ledger.residual()) / roundOff);
      }
      // a difference of four terms is off by one unit for each
      if (largest <= 4) {
        throw new IllegalStateException(
            "the residual is no more than " + largest + " units of round-off in all runs");
      }
    }
  };

  /** The linear solver's tolerance is 1e-9 K, of tens of kelvin that drive a body. */
  private static final double SOLVED = 1e-8;

  private static final Material STONE = Material.of("stone", 1.5, 2000, 1000);

  private static TimeFunction constant(double value) {
    return TimeFunction.constant(value);
  }

  private static TransientSolution run(
      ConductionProblem problem, IntegratorSettings settings, double... times) {
    String block = problem.network().grid().layout().blocks().get(0).name();
    TransientSolution solution =
        TransientSolver.solve(problem, List.of(new Probe.Mean("mean", block)), times, settings);
    if (!solution.outcome().isCompleted()) {
      throw new IllegalStateException(solution.outcome().toString());
    }
    return solution;
  }

  private static Layout slab(double conductivity) {
    return slab(Material.of("slab", conductivity, 2000, 1000));
  }

  /** One square metre, 100 mm thick. */
  private static Layout slab(Material material) {
    return new Layout(List.of(new Block.Solid("slab", Box.ofSize(0.1, 1, 1), material)));
  }

  private static ConductionProblem filmedSlab() {
    return ConductionProblem.builder(slab(1), MeshControl.uniform(0.01))
        .boundary(Face.X_MIN, Boundary.Convection.of(10, 310))
        .boundary(Face.X_MAX, Boundary.Convection.of(20, 280))
        .build();
  }

  /** 30 mm of foam and 50 mm of stone between 320 K and 280 K. */
  private static ConductionProblem heldWall(double resistance) {
    return heldWallBuilder(resistance).build();
  }

  private static ConductionProblem.Builder heldWallBuilder(double resistance) {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid(
                    "foam", Box.ofSize(0.08, 1, 1), Material.of("foam", 0.04, 30, 1400)),
                new Block.Solid(
                    "stone",
                    new Box(new Point(0.03, 0, 0), new Point(0.08, 1, 1)),
                    Material.of("stone", 2, 2000, 1000))));
    return ConductionProblem.builder(layout, MeshControl.graded(0.01, 0.004))
        .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(320))
        .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(280))
        .thinResistance(ThinResistance.between("foam", "stone", resistance));
  }

  private static ConductionProblem.Builder inRoom(Block body) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Environment("room", Box.ofSize(0.5, 0.6, 0.6)));
    blocks.add(body);
    return ConductionProblem.builder(new Layout(blocks), MeshControl.uniform(0.03))
        .boundary("room", Boundary.Convection.of(8, 290));
  }

  private static double area(ConductionProblem problem) {
    return problem.network().boundaryPorts().stream().mapToDouble(Port.BoundaryPort::area).sum();
  }

  /** 24 W in a block behind films that let nothing pass, so that it has cells along all axes. */
  private static ConductionProblem insulatedBlock() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid(
                    "block", Box.ofSize(0.2, 0.3, 0.4), Material.of("copper", 400, 2000, 1000))));
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, MeshControl.graded(0.06, 0.03))
            .source("block", constant(24))
            .initial(290);
    for (Face face : Set.of(Face.X_MIN, Face.Y_MIN, Face.Z_MIN)) {
      builder.boundary(face, Boundary.Convection.of(0, 290));
    }
    return builder.build();
  }
}
