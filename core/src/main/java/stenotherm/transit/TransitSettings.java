package stenotherm.transit;

import stenotherm.base.Checks;
import stenotherm.base.Workers;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;

/**
 * How a transit is computed: mesh, time steps, solver, threads.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param mesh cells of the parcel
 * @param interval time between stored values [s]
 * @param stepping time steps of the full solver; a reduced model steps exactly
 * @param solver what solves the heat equation
 * @param workers threads that build a reduced model; results have the same bits for any
 */
public record TransitSettings(
    MeshControl mesh,
    double interval,
    IntegratorSettings stepping,
    Solver solver,
    Workers workers) {
  /**
   * Errors against cells: command warmer-accuracy of the validation. Cells of up to 12 mm made an
   * animal's mean 0.05 K worse; small cells around packs gave 0.05 K for half as many cells again.
   */
  private static final MeshControl STANDARD_MESH =
      new MeshControl(0.009, 0.009, 1.6).withEdgeCell(0.002);

  /**
   * Settings with a reduced model where the parcel allows it, made by one thread.
   *
   * @param mesh cells of the parcel
   * @param interval time between stored values [s]
   * @param stepping time steps of the full solver
   * @throws stenotherm.base.InvalidInputException if the interval is not above 0
   */
  public TransitSettings(MeshControl mesh, double interval, IntegratorSettings stepping) {
    this(mesh, interval, stepping, Solver.REDUCED, new Workers(1));
  }

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if the interval is not above 0
   */
  public TransitSettings {
    Checks.given("mesh", mesh);
    Checks.given("stepping", stepping);
    Checks.given("solver", solver);
    Checks.positive("interval between stored values", interval, "s");
    Checks.given("workers", workers);
  }

  /**
   * The default: cells of at most 9 mm, of at most 2 mm at the faces of a warmer, and a value every
   * 15 minutes. Thin layers and the growth ratio make many cells finer. The error sits at the edges
   * of the warmer: equal cells of 8 mm, in as many cells, leave up to twice the error in its mean.
   *
   * @return the settings
   */
  public static TransitSettings standard() {
    return new TransitSettings(STANDARD_MESH, 900, IntegratorSettings.standard());
  }

  /**
   * The same settings with films and conductivities that follow the temperatures during a leg,
   * which takes the full solver. The difference shows the effect of constant coefficients.
   *
   * @return the slower settings
   */
  public TransitSettings live() {
    return new TransitSettings(mesh, interval, stepping.live(), solver, workers);
  }

  /**
   * The same settings with every cell stepped; no reduced model is built.
   *
   * @return the slower settings
   */
  public TransitSettings full() {
    return new TransitSettings(mesh, interval, stepping, Solver.FULL, workers);
  }

  /**
   * The same settings with several threads of their own for building a reduced model.
   *
   * @param number most threads at a time, the calling one included
   * @return the changed settings
   * @throws stenotherm.base.InvalidInputException if it is not above 0
   */
  public TransitSettings withThreads(int number) {
    return with(new Workers(number));
  }

  /**
   * The same settings with other threads for building a reduced model.
   *
   * @param others the threads, for example of the caller's executor
   * @return the changed settings
   */
  public TransitSettings with(Workers others) {
    return new TransitSettings(mesh, interval, stepping, solver, others);
  }

  /**
   * The same settings on a coarser or finer mesh.
   *
   * @param factor ratio of the new cell widths to the old ones [-]
   * @return the changed settings
   */
  public TransitSettings meshScaled(double factor) {
    return new TransitSettings(mesh.scaled(factor), interval, stepping, solver, workers);
  }
}
