package stenotherm.validation.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.parcel.InnerHeat;
import stenotherm.parcel.OneBody;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * A pack that melts as one body beside one each cell of which melts by its own temperature: what an
 * animal's coldest and hottest moment differ by is the error that an assessment takes for it.
 */
class PacksAsBodiesTest {
  private static final TransitSettings SETTINGS = TransitSettings.standard().meshScaled(3.5);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shredded paper|gel pack on lid, size: 130 x 100 x 20 mm, start: -12 °C|0.4",
        "shredded paper|gel pack on front, size: 150 x 100 x 25 mm, start: 40 % liquid|0.4",
        "none|gel pack on lid, size: 130 x 100 x 20 mm, start: -12 °C|0.65",
        "shredded paper|gel pack on lid, size: 130 x 100 x 20 mm, start: -12 °C}, {pack: gel pack on"
            + " floor, size: 130 x 100 x 20 mm, start: -12 °C|0.65",
      })
  void extremesOfTheAnimalAgree(String fill, String pack, double kelvin) {
    Scenario scenario =
        ScenarioReader.read(
            "pack.yaml",
            """
            format: 1
            title: Summer
            animal: crested gecko, 40 g
            cup: {size: 16 fl oz, position: [0 mm, 0 mm, 50 mm]}
            journey: {template: overnight by air, lows/highs: 22 to 33 °C}
            packings:
              - {name: box, box: 30 x 25 x 20 cm carton, foam: EPS 20 25 mm, fill: %s, packs: [{pack: %s}]}
            """
                .formatted(fill, pack));
    Parcel parcel = scenario.packings().get(0);
    ParcelModel model =
        ParcelModel.of(parcel, List.of(scenario.journey()), SETTINGS, ModelScope.NOMINAL);
    TransitResult body = model.run(scenario.journey(), Variation.NOMINAL).requireCompleted();
    TransitResult cells =
        ParcelModel.of(parcel, scenario.journey(), SETTINGS.full())
            .run(scenario.journey(), Variation.NOMINAL)
            .requireCompleted();
    double[] here = body.mean("cup");
    double[] there = cells.mean("cup");
    assertEquals(least(there), least(here), kelvin, "coldest");
    assertEquals(-least(negated(there)), -least(negated(here)), kelvin, "hottest");
    double[] liquid = body.liquidFraction("pack 1");
    double[] each = cells.liquidFraction("pack 1");
    for (int row = 0; row < liquid.length; row++) {
      assertEquals(each[row], liquid[row], 0.09, "liquid part, row " + row);
    }
    assertTrue(body.ledger().closes(), "ledger of the body");
    assertHeatOfFusion(body);
    // all steps and modes under the same law of melting
    TransitResult stepped =
        model.runEveryCell(scenario.journey(), Variation.NOMINAL).requireCompleted();
    double[] same = stepped.mean("cup");
    for (int row = 0; row < same.length; row++) {
      assertEquals(same[row], here[row], 0.02, "modes, row " + row);
    }
  }

  /** What sources in packs took up is what their enthalpy gained beyond that of a liquid. */
  private static void assertHeatOfFusion(TransitResult body) {
    for (PlacedPack pack : body.parcel().packs()) {
      OneBody melting = pack.oneBody().orElseThrow();
      double[] liquid = body.liquidFraction(pack.name());
      double[] mean = body.mean(pack.name());
      int last = liquid.length - 1;
      if (liquid[last] < 1) {
        // warmer than its melting temperature inside: what it gained shows only when all is liquid
        continue;
      }
      double gained = melting.curve().enthalpy(mean[last]) - melting.atSealing();
      double ofLiquid = melting.curve().slope(1) * (mean[last] - mean[0]);
      double taken = -body.ledger().sources().get(InnerHeat.ofPack(pack));
      assertEquals(gained - ofLiquid, taken, 0.01 * melting.curve().latent(), pack.name());
    }
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }

  private static double[] negated(double[] values) {
    return Arrays.stream(values).map(value -> -value).toArray();
  }
}
