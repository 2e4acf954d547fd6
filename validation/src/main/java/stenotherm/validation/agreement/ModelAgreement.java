package stenotherm.validation.agreement;

import java.util.List;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * A reduced model held against the full solver under the same coefficients, on the same grid.
 *
 * <p>Internal. A value, thus thread-safe.
 *
 * @param reduced the run of the reduced model
 * @param full that of the full solver
 * @param deviations of the means and extremes of all animals and warmers
 */
record ModelAgreement(TransitResult reduced, TransitResult full, List<Deviation> deviations) {
  /** The most that a mean may be off [K]. */
  static final double MEAN_LIMIT = 0.02;

  /** The most that an extreme may be off [K]. */
  static final double EXTREME_LIMIT = 0.05;

  /** The least part of an error that an estimate of it may be. */
  static final double LEAST_RATIO = 1.0 / 3;

  /** The most that the median of such parts may be. */
  static final double MEDIAN_RATIO = 10;

  /** Cells of parcels drawn at random. */
  static final Range CELLS = new Range(8000, 15000);

  /** Compares the two on a parcel and a journey. */
  static ModelAgreement of(Parcel parcel, Journey journey, TransitSettings settings) {
    TransitResult reduced = Transit.run(parcel, journey, Variation.NOMINAL, settings);
    TransitResult full = Transit.run(parcel, journey, Variation.NOMINAL, settings.full());
    return new ModelAgreement(reduced, full, Deviation.of(reduced, full));
  }

  /** Settings with a value every quarter of an hour. */
  static TransitSettings settings(MeshControl mesh, double stepTolerance) {
    return new TransitSettings(mesh, Times.HOUR / 4, IntegratorSettings.adaptive(stepTolerance))
        .reduced();
  }
}
