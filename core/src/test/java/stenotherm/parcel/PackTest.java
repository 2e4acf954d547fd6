package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.material.Melting;

class PackTest {
  private static final Dimensions SIZE = new Dimensions(0.10, 0.06, 0.015);

  /** 80 g of gel in a pouch of 90 ml. */
  private static final PackClass GEL =
      new PackClass("gel", Materials.GEL_PACK, SIZE, 0.080, 0.01, Source.assumed("made up"));

  private static final Placement ON_LID = Placement.onFace(Face.Z_MAX, Mounting.taped());

  private static PlacedPack pack(PackStart start) {
    return new PlacedPack("pack", GEL, ON_LID, start);
  }

  /**
   * A warmer's heat leaves at its edges. Small cells around a pack would cost more than they tell.
   */
  @Test
  void onlyWarmersHaveFineEdges() {
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.X_MIN, Mounting.taped());
    Parcel both = packed(new PackStart.AtTemperature(263.15)).withWarmers(List.of(pad));
    Set<String> fine =
        both.layout().blocks().stream()
            .flatMap(block -> block.asSolid().stream())
            .filter(Block.Solid::fineEdges)
            .map(Block::name)
            .collect(Collectors.toSet());
    assertEquals(Set.of(pad.name()), fine);
  }

  private static Parcel packed(PackStart start) {
    return Packings.plain().withPacks(List.of(pack(start)));
  }

  @Test
  void aPackKeepsItsMassInItsSize() {
    Parcel parcel = packed(new PackStart.AtTemperature(263.15));
    Parcel without = parcel.withPacks(List.of());
    double displaced = SIZE.volume() * Materials.SHREDDED_PAPER.density();
    assertEquals(0.080 - displaced, parcel.mass() - without.mass(), 1e-12);
    MeshControl mesh = MeshControl.graded(0.04, 0.02);
    double fill = displaced * Materials.SHREDDED_PAPER.specificHeat();
    assertEquals(
        0.080 * Materials.GEL_PACK.specificHeat() - fill,
        parcel.network(mesh).totalCapacity() - without.network(mesh).totalCapacity(),
        1e-6);
  }

  @Test
  void theMassMustFitTheSize() {
    assertThrows(
        InvalidInputException.class,
        () -> new PackClass("gel", Materials.GEL_PACK, SIZE, 0.2, 0, Source.assumed("made up")));
    assertThrows(
        InvalidInputException.class,
        () -> new PackClass("gel", Materials.GEL_PACK, SIZE, 0.08, -1, Source.assumed("made up")));
  }

  @Test
  void thePackStartsInItsOwnState() {
    assertEquals(
        InitialState.uniform(295.15).with("pack", 263.15),
        packed(new PackStart.AtTemperature(263.15)).initialState(295.15));
    assertEquals(
        InitialState.uniform(295.15).partlyMelted("pack", 0.25),
        packed(new PackStart.PartlyMelted(0.25)).initialState(295.15));
    assertEquals(InitialState.uniform(295.15), Packings.plain().initialState(295.15));
  }

  @Test
  void aStateThatIsNoneIsRefused() {
    String message =
        assertThrows(InvalidInputException.class, () -> pack(new PackStart.AtTemperature(272.65)))
            .getMessage();
    assertEquals(
        "start of pack 'pack': -0.5 °C (31.1 °F) is where 'gel pack' melts; say which part of it is liquid, such as 0 % liquid for one that is frozen through",
        message);
    PackClass brick =
        new PackClass("brick", Materials.SAND, SIZE, 0.14, 0, Source.assumed("made up"));
    assertThrows(
        InvalidInputException.class,
        () -> new PlacedPack("pack", brick, ON_LID, new PackStart.PartlyMelted(0.5)));
    assertThrows(InvalidInputException.class, () -> new PackStart.PartlyMelted(1.1));
    assertThrows(InvalidInputException.class, () -> new PackStart.AtTemperature(-5));
  }

  @Test
  void packsThatMeltCarryACaution() {
    assertEquals(
        List.of(PackClass.SUPERCOOLING_CAUTION),
        packed(new PackStart.AtTemperature(263.15)).cautions());
    assertEquals(List.of(), Packings.plain().cautions());
  }

  /** A pack that was not cold enough is a mistake that the temperatures alone do not show. */
  @Test
  void aPackThatIsLiquidAtSealingCarriesACaution() {
    String liquid =
        "'pack' is liquid at sealing: against heat it helps by its mass alone, as nothing in it is"
            + " left to melt.";
    for (PackStart start :
        List.of(new PackStart.AtTemperature(283.15), new PackStart.PartlyMelted(1))) {
      assertEquals(List.of(PackClass.SUPERCOOLING_CAUTION, liquid), packed(start).cautions());
    }
    assertEquals(
        List.of(PackClass.SUPERCOOLING_CAUTION),
        packed(new PackStart.PartlyMelted(0.99)).cautions());
  }

  /** Frozen at -10 °C into a parcel at 20 °C in air at 20 °C: all heat that it takes comes in. */
  @Test
  void theHeatOfAPackComesThroughTheWalls() {
    Material gel = Materials.GEL_PACK;
    Melting melting = ((Behaviour.Melts) gel.behaviour()).melting();
    Parcel parcel = packed(new PackStart.AtTemperature(263.15));
    HeatNetwork network = parcel.network(MeshControl.graded(0.04, 0.02));
    HeatEngine engine =
        Runs.engine(
            parcel,
            network,
            List.of(new Probe.Mean("pack", "pack"), new Probe.LiquidFraction("liquid", "pack")),
            293.15);
    Runs.advance(engine, network, 3600, 293.15);
    double[] after = Runs.read(engine);
    assertTrue(after[1] > 0 && after[1] < 1, "melting after an hour");
    Runs.advance(engine, network, 4 * 86400.0, 293.15);
    assertEquals(293.15, Runs.read(engine)[0], 1e-3);
    double frozen = gel.specificHeat() * (melting.range().low() - 263.15);
    double liquid = melting.liquidSpecificHeat() * (293.15 - melting.range().high());
    double expected = 0.080 * (frozen + melting.latentHeat() + liquid);
    double in = engine.ledger().boundaries().values().stream().mapToDouble(v -> v).sum();
    // the last millikelvin of the whole parcel are left out
    assertEquals(expected, in, 0.001 * network.totalCapacity());
    double lastMillikelvin = 0.001 * 0.080 * melting.liquidSpecificHeat();
    assertEquals(expected, engine.ledger().storedIn().get("pack"), lastMillikelvin);
    assertTrue(engine.ledger().closes());
  }

  @Test
  void aPackLiesWhereItIsPut() {
    Position on = new Position(0.02, -0.01, 0.065);
    for (Axis thin : Axis.values()) {
      Box box = new Placement.InCavity(on, thin).box(SIZE, Packings.plain().cavity());
      assertEquals(0.024 + 0.065, box.min().z(), 1e-12, thin.name());
      assertEquals(0.15 + 0.02, box.centre().x(), 1e-12);
      assertEquals(0.12 - 0.01, box.centre().y(), 1e-12);
      assertEquals(0.015, box.size(thin), 1e-12);
      assertEquals(SIZE.volume(), box.volume(), 1e-12);
    }
    Box shifted =
        new Placement.OnFace(Face.X_MAX, 0.03, -0.02, Mounting.taped())
            .box(SIZE, Packings.plain().cavity());
    assertEquals(0.12 + 0.03, shifted.centre().y(), 1e-12);
    assertEquals(0.1 - 0.02, shifted.centre().z(), 1e-12);
    assertEquals(Packings.plain().cavity().max().x(), shifted.max().x());
    assertThrows(
        InvalidInputException.class,
        () -> new Placement.OnFace(Face.X_MAX, Double.NaN, 0, Mounting.taped()));
  }
}
