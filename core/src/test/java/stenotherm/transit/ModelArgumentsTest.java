package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.GridBudget;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;

class ModelArgumentsTest {
  private static final Parcel PARCEL = Packings.plain();
  private static final Journey JOURNEY =
      new Journey(
          LocalDateTime.of(2024, 1, 15, 18, 0),
          293,
          List.of(
              new Leg(
                  "van",
                  new Place("here", ZoneOffset.UTC),
                  7200,
                  Ambient.constant(285),
                  2,
                  FaceFilms.indoors(),
                  Source.assumed("a test"))));

  private static String refusal(Executable action) {
    return assertThrows(InvalidInputException.class, action).getMessage();
  }

  @Test
  @SuppressWarnings("NullAway")
  void nullsAreRefusedByName() {
    TransitSettings settings = TransitSettings.standard();
    assertEquals(
        "parcel: must not be null",
        refusal(() -> ParcelModel.of((Parcel) null, JOURNEY, settings)));
    assertEquals(
        "settings: must not be null", refusal(() -> ParcelModel.of(PARCEL, JOURNEY, null)));
    assertEquals(
        "mesh: must not be null",
        refusal(() -> new TransitSettings(null, 900, IntegratorSettings.standard())));
  }

  @Test
  void aModelThatWouldNotFitIsRefusedBeforeItsGrid() {
    MeshControl mesh = MeshControl.uniform(0.008).within(new GridBudget(2_000_000, 50_000_000));
    TransitSettings settings = new TransitSettings(mesh, 900, IntegratorSettings.standard());
    String message = refusal(() -> ParcelModel.of(PARCEL, JOURNEY, settings));
    assertTrue(message.startsWith("grid: "), message);
    assertTrue(message.contains("allowed are 2000000 cells and 50 MB"), message);
  }
}
