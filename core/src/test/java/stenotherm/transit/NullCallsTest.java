package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.animal.Animals;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Temperature;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyBuilder;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;

/**
 * A null is named where a call takes it, before anything is built; records have a test of theirs.
 */
class NullCallsTest {
  private static final TransitSettings SETTINGS =
      new TransitSettings(Packings.FEW_CELLS, 1800, IntegratorSettings.standard()).full();
  private static final Parcel PARCEL = Packings.plain();
  private static final Journey JOURNEY =
      JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 15, 20, 0), Temperature.celsius(22))
          .leg("room", Duration.ofHours(1), Temperature.celsius(12))
          .build();

  @Test
  void theyAreNamed() {
    ParcelModel model = ParcelModel.of(PARCEL, JOURNEY, SETTINGS);
    TransitResult result = model.run(JOURNEY, Variation.NOMINAL);
    Container cup = PARCEL.containers().get(0);
    Occupant who = cup.occupant().orElseThrow();
    Bedding towel = Bedding.dampTowel(0.002);
    Map<Executable, String> calls = new LinkedHashMap<>();
    calls.put(() -> Animals.named(null), "animal");
    calls.put(() -> Animals.group(null), "animal");
    calls.put(() -> Materials.named(null), "material");
    calls.put(
        () -> new Container("cup", cup.vessel(), cup.position(), (Bedding) null, who), "bedding");
    calls.put(
        () -> new Container("cup", cup.vessel(), cup.position(), towel, (Occupant) null),
        "occupant");
    calls.put(() -> Transit.run(null, JOURNEY), "parcel");
    calls.put(() -> Transit.run(PARCEL, null), "journey");
    calls.put(() -> Transit.run(PARCEL, JOURNEY, null, SETTINGS), "variation");
    calls.put(() -> Transit.run(PARCEL, JOURNEY, Variation.NOMINAL, null), "settings");
    calls.put(() -> Transit.run(PARCEL, JOURNEY, Variation.NOMINAL, SETTINGS, null), "listener");
    calls.put(() -> ParcelModel.of(PARCEL, (Journey) null, SETTINGS), "journey");
    calls.put(() -> ParcelModel.stepsEveryCell(null), "settings");
    calls.put(() -> model.run(null, Variation.NOMINAL), "journey");
    calls.put(() -> model.run(JOURNEY, null), "variation");
    calls.put(() -> model.run(JOURNEY, Variation.NOMINAL, null), "listener");
    calls.put(() -> model.means(JOURNEY, Variation.NOMINAL, null), "names");
    calls.put(() -> model.readings(JOURNEY, Variation.NOMINAL, null), "outputs");
    calls.put(() -> model.runEveryCell(JOURNEY, null), "variation");
    calls.put(() -> model.storedTimes(null), "journey");
    calls.put(() -> CondensedModel.of(model, (Journey) null, List.of()), "journey");
    calls.put(() -> CondensedModel.of(null, JOURNEY, List.of()), "model");
    calls.put(() -> CondensedModel.of(model, JOURNEY, null), "runs to span");
    calls.put(() -> result.mean(null), "name of an output");
    calls.put(() -> result.oxygen(null), "cup");
    calls.put(() -> result.power(null), "warmer");
    calls.put(() -> Variation.NOMINAL.with(null, 0.5), "factor");
    calls.put(() -> Variation.NOMINAL.withWarmer(null, 0.5), "warmer");
    calls.forEach(
        (call, name) ->
            assertEquals(
                name + ": must not be null",
                assertThrows(InvalidInputException.class, call).getMessage()));
  }
}
