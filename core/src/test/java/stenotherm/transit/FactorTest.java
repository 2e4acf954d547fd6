package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Temperature;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyBuilder;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.warmer.Warmers;

/** Which quantities a packing depends on, and which of them a model must be built for. */
class FactorTest {
  /** What every packing depends on. */
  private static final Set<Factor> ALWAYS =
      EnumSet.of(
          Factor.WALL_CONDUCTIVITY,
          Factor.FILL_CONDUCTIVITY,
          Factor.SURFACE_FILM,
          Factor.AMBIENT,
          Factor.FOAM_DIFFUSIVITY,
          Factor.EVAPORATION,
          Factor.METABOLISM,
          Factor.CUP_AIR);

  private static final Journey ROOM =
      JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 5, 18, 0), Temperature.celsius(20))
          .leg("room", Duration.ofHours(6), Temperature.celsius(10))
          .build();

  private static Set<Factor> of(Parcel parcel) {
    return Arrays.stream(Factor.values())
        .filter(each -> each.matters(parcel, ROOM))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Factor.class)));
  }

  private static Set<Factor> alwaysAnd(Factor... more) {
    Set<Factor> all = EnumSet.copyOf(ALWAYS);
    all.addAll(List.of(more));
    return all;
  }

  @Test
  void whatIsNotThereDoesNotMatter() {
    Parcel taped = Packings.plain().withOpenings(new Openings(0, List.of()));
    assertEquals(ALWAYS, of(taped));
    assertEquals(alwaysAnd(Factor.SEAMS), of(Packings.plain()));
    assertEquals(
        alwaysAnd(Factor.WARMER_STRENGTH),
        of(taped.withWarmers(Packings.still(2).warmers())),
        "watts that are known have no bench and no powder");
    assertEquals(
        alwaysAnd(
            Factor.WARMER_STRENGTH, Factor.RATING_BENCH, Factor.REACTION, Factor.ACTIVATION_ENERGY),
        of(
            taped.withWarmers(
                List.of(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped())))));
  }

  /** A basis must hold what conducts otherwise; what only gives other powers it holds already. */
  @Test
  void aModelIsBuiltForWhatConducts() {
    assertEquals(
        EnumSet.of(
            Factor.WALL_CONDUCTIVITY,
            Factor.FILL_CONDUCTIVITY,
            Factor.SURFACE_FILM,
            Factor.SOLAR_ABSORPTANCE,
            Factor.STOWAGE,
            Factor.CUP_AIR),
        Arrays.stream(Factor.values())
            .filter(Factor::changesConduction)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Factor.class))));
    assertTrue(Variation.NOMINAL.with(Factor.CUP_AIR, 1).movesProperties());
    assertFalse(Variation.NOMINAL.with(Factor.RATING_BENCH, 1).movesProperties());
  }

  @Test
  void rangesHoldTheUsualValueAndWordsDiffer() {
    for (Range range :
        List.of(
            Factor.REACTIONS,
            Factor.EVAPORATIONS,
            Factor.METABOLISMS,
            Factor.CUP_AIRS,
            Factor.FILM_FACTORS)) {
      assertTrue(range.low() > 0 && range.contains(1), range.toString());
    }
    assertEquals(
        Factor.values().length,
        Arrays.stream(Factor.values()).map(Factor::words).distinct().count());
  }
}
