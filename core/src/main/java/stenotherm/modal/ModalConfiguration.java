package stenotherm.modal;

import org.jspecify.annotations.Nullable;

/**
 * The modes of a reduced model under certain surface coefficients and factors on conductivities.
 * Made by {@link ReducedModel#configuration}, for engines of that model.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class ModalConfiguration {
  final ReducedModel model;
  private final double[] films;
  private final double[] factors;
  final ModalSystem system;

  /**
   * The outputs in the modes, if many readings make this worth its cost: linear outputs, then the
   * candidates of each block with extremes.
   */
  final ModalSystem.@Nullable RowBlock outputs;

  /** The same in the basis, but for those of boundaries. */
  final Projection.Rows inBasis;

  /** Heat flow into the body through each boundary, in the basis. */
  final Projection.Rows flows;

  /** Mean surface temperature of each boundary, in the basis. */
  final Projection.Rows surfaces;

  /** Finds the modes. */
  ModalConfiguration(ReducedModel model, double[] films, double[] factors) {
    this.model = model;
    this.films = films.clone();
    this.factors = factors.clone();
    Projection projection = model.network().at(films, factors);
    this.system = new ModalSystem(projection, model.allVectors());
    this.outputs = null;
    this.inBasis = model.outputRows(factors);
    this.flows = projection.flows();
    this.surfaces = projection.surfaces();
  }

  /** The same modes with the outputs in them. */
  private ModalConfiguration(ModalConfiguration other) {
    this.model = other.model;
    this.films = other.films;
    this.factors = other.factors;
    this.system = other.system;
    this.inBasis = other.inBasis;
    this.outputs = system.rows(model.withBoundaries(inBasis, model.network().at(films, factors)));
    this.flows = other.flows;
    this.surfaces = other.surfaces;
  }

  /**
   * Returns the surface coefficients.
   *
   * @return a copy, one for each boundary port [W/(m2 K)]
   */
  public double[] films() {
    return films.clone();
  }

  /**
   * Returns the factors on conductivities.
   *
   * @return a copy, one for each block that varies [-]
   */
  public double[] factors() {
    return factors.clone();
  }

  /**
   * Returns the rates at which the modes decay.
   *
   * @return a copy, in no order [1/s]; none is negative
   */
  public double[] rates() {
    return system.lambda.clone();
  }

  /**
   * The same configuration with its outputs transformed to its modes. This halves the time of each
   * reading and pays after some hundred readings.
   *
   * @return the configuration for many readings
   */
  public ModalConfiguration forManyReadings() {
    return outputs == null ? new ModalConfiguration(this) : this;
  }

  /** The same configuration in the modes of a coarser model. */
  Coarser coarser(int[] members) {
    Projection projection = model.network().at(films, factors);
    ModalSystem coarse = new ModalSystem(projection, members);
    return new Coarser(coarse, coarse.singleRows(model.withBoundaries(inBasis, projection)));
  }

  /** A configuration in the modes of a coarser model, with rows that are read one by one. */
  record Coarser(ModalSystem system, ModalSystem.SingleRows outputs) {}
}
