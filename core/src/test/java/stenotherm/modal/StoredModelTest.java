package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

class StoredModelTest {
  private static Box cube(double from, double to) {
    return new Box(new Point(from, from, from), new Point(to, to, to));
  }

  private static final HeatNetwork NETWORK =
      HeatNetwork.builder(
              new Layout(
                  List.of(
                      new Block.Solid("foam", cube(0, 0.1), Material.of("foam", 0.04, 20, 1450)),
                      new Block.Solid(
                          "core", cube(0.03, 0.07), Material.of("core", 0.5, 800, 3500)))),
              MeshControl.uniform(0.02))
          .source("core")
          .boundary(Face.Z_MAX, BoundaryKind.CONVECTION)
          .boundary(Face.Z_MIN, BoundaryKind.FLUX)
          .build();

  private static final double[] STILL = {0, 5};
  private static final double[] WINDY = {0, 20};
  private static final double[] GIVEN = {1};
  private static final double[] WET = {1.25};

  private static final ReducedModel MODEL =
      ReducedModel.builder(
              NETWORK,
              List.of(
                  new Probe.Mean("mean", "core"),
                  new Probe.Minimum("coldest", "core"),
                  new Probe.Maximum("warmest", "core"),
                  new Probe.At("inside", new Point(0.02, 0.05, 0.05)),
                  new Probe.SurfaceMean("top", "zMax"),
                  new Probe.HeatFlow("in", "zMax")))
          .varying(List.of("foam"))
          .spanning(STILL, GIVEN)
          .spanning(STILL, WET)
          .spanning(WINDY, GIVEN)
          .startsApart("core")
          .build();

  private static final InitialState START = InitialState.uniform(290).with("core", 300);

  private static byte[] bytes(ReducedModel model) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    model.write(new DataOutputStream(out));
    return out.toByteArray();
  }

  private static ReducedModel read(byte[] bytes) throws IOException {
    return ReducedModel.read(new DataInputStream(new ByteArrayInputStream(bytes)));
  }

  private static double[] values(HeatEngine engine) {
    double[] values = new double[engine.outputs().size()];
    engine.read(values);
    return values;
  }

  @Test
  void runsToTheSameBits() throws IOException {
    ReducedModel stored = read(bytes(MODEL));
    assertEquals(MODEL.inputs(), stored.inputs());
    assertEquals(MODEL.outputs(), stored.outputs());
    assertEquals(MODEL.modes(), stored.modes());
    assertArrayEquals(bytes(MODEL), bytes(stored));
    ModalEngine expected = MODEL.engine(START);
    ModalEngine engine = stored.engine(START);
    Random random = new Random(1);
    for (int step = 0; step < 30; step++) {
      double[] from = {10, 270 + 20 * random.nextDouble(), random.nextDouble()};
      double[] until = {0, 270 + 20 * random.nextDouble(), 1};
      if (step % 5 == 0) {
        expected.use(configuration(MODEL, step / 5));
        engine.use(configuration(stored, step / 5));
      }
      for (ModalEngine each : List.of(expected, engine)) {
        each.advance(600, from, until);
      }
      assertArrayEquals(values(expected), values(engine));
    }
    assertArrayEquals(expected.errorEstimates(), engine.errorEstimates());
    assertEquals(expected.ledger(), engine.ledger());
    assertEquals(expected.work().iterations(), engine.work().iterations());
    expected.useCoefficients(WINDY);
    engine.useCoefficients(WINDY);
    assertArrayEquals(values(expected), values(engine));
    assertEquals(3, stored.spanned().size());
    assertArrayEquals(STILL, stored.spanned().get(1).films());
    assertArrayEquals(WET, stored.spanned().get(1).factors());
    assertEquals(List.of("foam"), stored.varying());
  }

  /** One that the model spans, or another. */
  private static ModalConfiguration configuration(ReducedModel model, int number) {
    return number % 2 == 0
        ? model.spanned().get(number / 2)
        : model.configuration(new double[] {0, 3 + number}, new double[] {1 + 0.1 * number});
  }

  @Test
  void keepsWhichInputsGoTogether() throws IOException {
    RandomBody body = new RandomBody(1, 3);
    ReducedModel model =
        body.builder()
            .spanning(body.films(), RandomBody.GIVEN)
            .together(Set.of("xMin", "xMax", "zMin"))
            .build();
    ReducedModel stored = read(bytes(model));
    double[] inputs = new double[8];
    Arrays.fill(inputs, 300);
    ModalEngine expected = model.engineWithoutEstimates(InitialState.uniform(290));
    ModalEngine engine = stored.engineWithoutEstimates(InitialState.uniform(290));
    expected.advance(900, inputs, inputs);
    engine.advance(900, inputs, inputs);
    assertArrayEquals(values(expected), values(engine));
    inputs[0] = 301;
    assertThrows(InvalidInputException.class, () -> engine.advance(900, inputs, inputs));
  }

  @Test
  void saysWhatNeedsTheCells() throws IOException {
    ReducedModel stored = read(bytes(MODEL));
    ModalEngine engine = stored.engine(START);
    engine.advance(60, new double[3], new double[3]);
    for (Runnable call :
        List.<Runnable>of(
            engine::field, engine::meanField, () -> engine.moment().get(), stored::body)) {
      assertEquals(
          "the model was read without its cells; the field needs them",
          assertThrows(IllegalStateException.class, call::run).getMessage());
    }
  }

  /** Boundaries that are no films have no coefficient: what stands in its place is not kept. */
  @Test
  void anythingMayStandForTheFilmOfAFlux() throws IOException {
    double[] films = {Double.NaN, 5};
    ReducedModel model =
        ReducedModel.builder(NETWORK, MODEL.outputs())
            .spanning(films, new double[0])
            .spanning(new double[] {-1, 5}, new double[0])
            .startsApart("core")
            .build();
    assertEquals(1, model.spanned().size());
    ReducedModel stored = read(bytes(model));
    assertEquals(0, model.configuration(films, new double[0]).films()[0]);
    assertEquals(0, stored.spanned().get(0).films()[0]);
  }

  private static ModelFormatException refused(byte[] bytes) {
    return assertThrows(ModelFormatException.class, () -> read(bytes));
  }

  @Test
  void tellsWhereItIsDamaged() throws IOException {
    byte[] bytes = bytes(MODEL);
    assertEquals(
        "stored model, magic number at byte 8: this is no stored model",
        refused(new byte[100]).getMessage());
    assertEquals(
        "stored model, magic number at byte 0: the data end here",
        refused(new byte[0]).getMessage());
    byte[] later = bytes.clone();
    later[11] = 1;
    assertEquals(
        "stored model, version at byte 12: 1 is unknown; 3 is read here",
        refused(later).getMessage());
    byte[] many = bytes.clone();
    ByteBuffer.wrap(many).putInt(12, Integer.MAX_VALUE);
    assertEquals(
        "stored model, boundary ports at byte 16: 2147483647 must lie between 0 and 1000",
        refused(many).getMessage());
    byte[] flipped = bytes.clone();
    flipped[bytes.length / 2] ^= 1;
    assertEquals("checksum", refused(flipped).field());
    assertEquals(bytes.length, refused(flipped).position());
    assertEquals("checksum", refused(Arrays.copyOf(bytes, bytes.length - 1)).field());
  }

  /** A byte, an int or a double is changed, bytes are left out or put in. */
  private static byte[] mutant(byte[] bytes, Random random) {
    byte[] mutant = bytes.clone();
    // lengths stand among the first bytes, numbers among the last
    int reach = random.nextBoolean() ? 800 : bytes.length - Double.BYTES;
    int at = random.nextInt(reach);
    switch (random.nextInt(5)) {
      case 0 -> mutant[at] ^= (byte) (1 << random.nextInt(8));
      case 1 ->
          ByteBuffer.wrap(mutant)
              .putInt(
                  at,
                  List.of(-1, 0, Integer.MAX_VALUE, 1 << random.nextInt(31))
                      .get(random.nextInt(4)));
      case 2 ->
          ByteBuffer.wrap(mutant)
              .putDouble(
                  at, List.of(Double.NaN, Double.POSITIVE_INFINITY, -1e300).get(random.nextInt(3)));
      case 3 -> {
        System.arraycopy(bytes, at + 4, mutant, at, bytes.length - at - 4);
        mutant = Arrays.copyOf(mutant, bytes.length - 4);
      }
      default -> mutant = Arrays.copyOf(mutant, at);
    }
    return mutant;
  }

  @Test
  void noMutantIsTakenForAModel() throws IOException {
    byte[] bytes = bytes(MODEL);
    Random random = new Random(5);
    for (int trial = 0; trial < 3000; trial++) {
      byte[] mutant = mutant(bytes, random);
      if (!Arrays.equals(bytes, mutant)) {
        refused(mutant);
      }
    }
  }

  /** With a checksum that is right: what is read then is a model whose engine can run. */
  @Test
  void mutantsWithTheirChecksumAreRefusedOrRun() throws IOException {
    byte[] bytes = bytes(MODEL);
    Random random = new Random(6);
    int read = 0;
    for (int trial = 0; trial < 1500; trial++) {
      byte[] mutant = mutant(bytes, random);
      if (mutant.length < Long.BYTES) {
        continue;
      }
      CRC32 checksum = new CRC32();
      checksum.update(mutant, 0, mutant.length - Long.BYTES);
      ByteBuffer.wrap(mutant).putLong(mutant.length - Long.BYTES, checksum.getValue());
      try {
        ReducedModel model = read(mutant);
        ModalEngine engine = model.engine(InitialState.uniform(290));
        double[] inputs = new double[model.inputs().size()];
        for (ModalConfiguration each : model.spanned()) {
          engine.use(each);
          engine.advance(60, inputs, inputs);
          values(engine);
        }
        engine.ledger();
        read++;
      } catch (ModelFormatException refused) {
        assertTrue(refused.position() <= mutant.length);
      }
    }
    assertTrue(read > 300, read + " were read");
  }
}
