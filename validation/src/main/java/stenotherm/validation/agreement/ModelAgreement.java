package stenotherm.validation.agreement;

import java.util.List;
import java.util.stream.Stream;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * A reduced model held against stepping every cell under the same coefficients, on the same grid:
 * as it was built for, and with uncertain quantities elsewhere.
 *
 * <p>Internal. A value, thus thread-safe.
 *
 * @param nominal the run of the reduced model with everything nominal
 * @param ofNominal deviations of the means and extremes of all animals and warmers in it
 * @param ofVaried the same of the run with uncertain quantities elsewhere; empty if there was none
 */
record ModelAgreement(TransitResult nominal, List<Deviation> ofNominal, List<Deviation> ofVaried) {
  /** The most that a mean may be off [K]. */
  static final double MEAN_LIMIT = 0.02;

  /** The most that an extreme may be off [K]. */
  static final double EXTREME_LIMIT = 0.05;

  /** The least part of an error that an estimate of it may be. */
  static final double LEAST_RATIO = 1.0 / 3;

  /**
   * The most that the median of such parts may be. It was 10 before animals, damp bedding and the
   * air heated a parcel: coarser models miss more of their milliwatts than the whole model does.
   */
  static final double MEDIAN_RATIO = 20;

  /** Cells of parcels drawn at random. */
  static final Range CELLS = new Range(8000, 15000);

  /** Compares the two on a parcel and a journey. */
  static ModelAgreement of(
      Parcel parcel, Journey journey, Variation variation, TransitSettings settings) {
    ParcelModel model = ParcelModel.of(parcel, journey, settings);
    ModelAgreement nominal = ofNominal(model, journey);
    return new ModelAgreement(
        nominal.nominal,
        nominal.ofNominal,
        Deviation.of(model.run(journey, variation), model.runEveryCell(journey, variation)));
  }

  /** Compares the two with everything nominal only. */
  static ModelAgreement ofNominal(ParcelModel model, Journey journey) {
    TransitResult nominal = model.run(journey, Variation.NOMINAL);
    return new ModelAgreement(
        nominal, Deviation.of(nominal, model.runEveryCell(journey, Variation.NOMINAL)), List.of());
  }

  /** All deviations. */
  List<Deviation> all() {
    return Stream.concat(ofNominal.stream(), ofVaried.stream()).toList();
  }

  /** Settings with a value every quarter of an hour. */
  static TransitSettings settings(MeshControl mesh, double stepTolerance) {
    return new TransitSettings(mesh, Times.HOUR / 4, IntegratorSettings.adaptive(stepTolerance));
  }
}
