package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Port;
import stenotherm.conduction.PortIndex;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ReducibleNetwork;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.material.Materials;
import stenotherm.modal.ReducedModel;

/** Sources for other physics inside a parcel. */
class InnerHeatTest {
  private static final MeshControl MESH = MeshControl.graded(0.04, 0.02);
  private static final Set<InnerHeat> ALL = EnumSet.allOf(InnerHeat.class);
  private static final double AIR = 280;
  private static final double HOUR = 3600;

  /** So long that nothing of the start is left: time constants are hours [s]. */
  private static final double LONG = 3e6;

  /** A cup off the middle, panels with joints, a pad on the lid. */
  private static Parcel parcel(double alongX) {
    return new Parcel(
        "askew",
        Packings.OUTER,
        Packings.WALLS.with(new Joints(List.of(Axis.values()), 1, 0.001)),
        Materials.SHREDDED_PAPER,
        List.of(Packings.cup("cup", new Position(alongX, 0.01, 0.03))),
        List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
  }

  private static List<Probe> probes(Parcel parcel) {
    List<Probe> probes = new ArrayList<>();
    probes.add(new Probe.Mean("animal", "cup animal"));
    probes.add(new Probe.Mean("towel", "cup towel"));
    probes.add(new Probe.Mean("fill", "fill"));
    for (String wall : parcel.innermostBlocks()) {
      probes.add(new Probe.Mean(wall, wall));
    }
    return probes;
  }

  private static double[] films(HeatNetwork network) {
    double[] films = new double[network.boundaryPorts().size()];
    Arrays.fill(films, Runs.FILM);
    return films;
  }

  /** Air of one temperature all around, one watt from one source. */
  private static double[] inputs(HeatNetwork network, int source) {
    int boundaries = network.boundaryPorts().size();
    double[] inputs = new double[boundaries + network.sourcePorts().size()];
    Arrays.fill(inputs, 0, boundaries, AIR);
    inputs[boundaries + source] = 1;
    return inputs;
  }

  private static double[] rises(HeatEngine engine, double duration, double[] inputs) {
    engine.advance(duration, inputs, inputs);
    double[] values = Runs.read(engine);
    for (int index = 0; index < values.length; index++) {
      values[index] -= AIR;
    }
    return values;
  }

  /** What a lasting watt raises each output by. */
  private static double[] steady(Parcel parcel, HeatNetwork network, String source) {
    ReducibleNetwork operator = new ReducibleNetwork(network, films(network));
    int input = PortIndex.of(operator.inputs()).input(source);
    double[] unit = new double[operator.inputs().size()];
    unit[input] = 1;
    double[] field = operator.vector();
    operator.solve(0, operator.heatOf(input), field, 1e-10);
    return operator.new Reader(probes(parcel)).read(field, unit);
  }

  private static double[] steady(Parcel parcel, String source) {
    return steady(parcel, parcel.network(MESH, List.of(), ALL), source);
  }

  @Test
  void sourcesComeInOrder() {
    Container dry =
        new Container(
            "dry",
            new Vessel.BoxCup(new Dimensions(0.04, 0.04, 0.03), Packings.CUP_WALL),
            new Position(0.1, 0, 0),
            List.of(new Bedding("paper", Materials.SHREDDED_PAPER, 0.01, 0)),
            Optional.empty());
    Container moss =
        new Container(
            "moss",
            new Vessel.BoxCup(new Dimensions(0.04, 0.04, 0.03), Packings.CUP_WALL),
            new Position(-0.1, 0, 0),
            List.of(
                new Bedding("paper", Materials.SHREDDED_PAPER, 0.01, 0), Bedding.dampMoss(0.01)),
            Optional.empty());
    Parcel parcel =
        Packings.parcel(
            List.of(dry, Packings.cup("cup", Position.MIDDLE_OF_FLOOR), moss),
            List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
    List<Port.SourcePort> ports = parcel.network(MESH, List.of(), ALL).sourcePorts();
    assertEquals(
        List.of(
            "pad",
            "cup animal",
            "cup latent heat",
            "moss latent heat",
            "ventilation",
            "latent heat of the walls"),
        ports.stream().map(Port::name).toList());
    // the damp layer alone
    assertEquals(0.04 * 0.04 * 0.01, ports.get(3).volume(), 1e-12);
    // 20 mm of foam around the cavity
    double foam = Box.ofSize(0.292, 0.232, 0.192).volume() - parcel.cavity().volume();
    assertEquals(foam, ports.get(5).volume(), 1e-9);
    assertEquals(
        List.of("pad", "ventilation"),
        parcel.network(MESH, List.of(), Set.of(InnerHeat.VENTILATION)).sourcePorts().stream()
            .map(Port::name)
            .toList());
  }

  /** No air comes and goes where a cup fills the cavity. */
  @Test
  void aFullCavityHasNoVentilation() {
    Box cavity = Packings.plain().cavity();
    Dimensions inner =
        new Dimensions(cavity.size(Axis.X), cavity.size(Axis.Y), cavity.size(Axis.Z));
    Parcel parcel =
        Packings.parcel(List.of(Packings.cup("cup", inner, Position.MIDDLE_OF_FLOOR)), List.of());
    assertEquals(
        EnumSet.of(InnerHeat.ANIMALS, InnerHeat.BEDDING, InnerHeat.WALLS), parcel.innerHeat());
    assertEquals(
        List.of("cup animal", "cup latent heat", "latent heat of the walls"),
        parcel.network(MESH, List.of(), parcel.innerHeat()).sourcePorts().stream()
            .map(Port::name)
            .toList());
    assertThrows(InvalidInputException.class, () -> parcel.network(MESH, List.of(), ALL));
  }

  @Test
  void namesOfSourcesAreTaken() {
    for (String name : List.of("ventilation", "latent heat of the walls", "cup latent heat")) {
      assertThrows(
          InvalidInputException.class,
          () ->
              Packings.parcel(
                  List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
                  List.of(
                      new PlacedWarmer(
                          name, Packings.steady(1), Face.Z_MAX, Mounting.taped(), 0))));
    }
  }

  /** The full and the reduced engine, a watt from each source in turn. */
  @Test
  void bothEnginesAgreeForEachSource() {
    Parcel parcel = parcel(0.03);
    HeatNetwork network = parcel.network(MESH, List.of(), ALL);
    List<Probe> probes = probes(parcel);
    double[] films = films(network);
    ReducedModel model =
        ReducedModel.builder(network, probes).spanning(films, new double[0]).build();
    for (int source = 0; source < network.sourcePorts().size(); source++) {
      String name = network.sourcePorts().get(source).name();
      double[] inputs = inputs(network, source);
      HeatEngine full = new FullEngine(network, probes, AIR, IntegratorSettings.adaptive(0.005));
      HeatEngine reduced = model.engine(InitialState.uniform(AIR));
      for (HeatEngine engine : List.of(full, reduced)) {
        engine.useCoefficients(films);
      }
      // the library's target for means of a reduced model
      assertClose(name, rises(full, HOUR, inputs), rises(reduced, HOUR, inputs), 0.02);
      for (HeatEngine engine : List.of(full, reduced)) {
        double given = engine.ledger().sources().getOrDefault(name, Double.NaN);
        assertEquals(engine.time(), given, 1e-9 * given);
        assertTrue(engine.ledger().closes());
      }
      // an answer has an accuracy of 1e-9 of a rise of some kelvins
      assertClose(name, steady(parcel, network, name), rises(reduced, LONG, inputs), 1e-7);
    }
  }

  private static void assertClose(
      String source, double[] expected, double[] got, double tolerance) {
    for (int index = 0; index < got.length; index++) {
      assertEquals(expected[index], got[index], tolerance, source + ", output " + index);
    }
  }

  @Test
  void mirroredParcelAnswersMirrored() {
    for (String source : List.of("cup animal", InnerHeat.ofWalls(), InnerHeat.ofVentilation())) {
      double[] answer = steady(parcel(0.03), source);
      double[] mirrored = steady(parcel(-0.03), source);
      assertEquals(answer[0], mirrored[0], 1e-8, source);
      assertEquals(answer[2], mirrored[2], 1e-8, source);
    }
  }

  /** What a watt in the filling warms the animal, a watt in the animal warms the filling. */
  @Test
  void fillingAndAnimalAnswerEachOtherAlike() {
    Parcel parcel = parcel(0.03);
    double ofFilling = steady(parcel, "cup animal")[2];
    assertEquals(steady(parcel, InnerHeat.ofVentilation())[0], ofFilling, 1e-8);
    assertTrue(ofFilling > 0.01);
  }
}
