package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Axis;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.journey.Leg;
import stenotherm.journey.Outdoors;
import stenotherm.journey.Place;
import stenotherm.material.Materials;
import stenotherm.modal.ModelFormatException;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Joints;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Vent;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;

class ParcelModelTest {
  private static final MeshControl MESH = Packings.FEW_CELLS;
  private static final LocalDateTime SEALED = LocalDateTime.of(2026, 1, 5, 18, 0);
  private static final Place DOCK = new Place("dockside", ZoneOffset.UTC);
  private static final Place TOWN = new Place("town", ZoneOffset.UTC);

  /** Steps that hardly differ from what reduced models do exactly. */
  private static final TransitSettings SETTINGS =
      new TransitSettings(MESH, Times.HOUR / 2, IntegratorSettings.adaptive(2e-4));

  private static final TransitSettings FEW_CELLS =
      new TransitSettings(Packings.FEW_CELLS, Times.HOUR / 2, IntegratorSettings.standard());

  /** What a result may weigh that is kept [bytes]. */
  private static final long MOST_BYTES = 100_000;

  private static Journey journey(double hours) {
    return journey(leg("dock", DOCK, hours, 272), leg("hall", TOWN, 4, 285));
  }

  private static Journey journey(Leg... legs) {
    return new Journey(SEALED, 294, List.of(legs));
  }

  private static Leg leg(String name, Place place, double hours, double ambient) {
    return leg(name, place, hours, Ambient.constant(ambient));
  }

  private static Leg leg(String name, Place place, double hours, TimeFunction ambient) {
    return new Leg(
        name,
        place,
        Times.fromHours(hours),
        ambient,
        1,
        FaceFilms.indoors(),
        Source.assumed("made up"));
  }

  private static Leg touching(Leg leg, Contact... contacts) {
    return leg.in(leg.surroundings().touching(List.of(contacts)));
  }

  private static Journey sunny(double hours) {
    Sunshine sun =
        Sunshine.on(Face.Z_MAX, TimeFunction.constant(300), SolarAbsorptance.KRAFT_BOARD);
    Leg dock = leg("dock", DOCK, hours, 272);
    return journey(dock.in(dock.surroundings().under(sun)), leg("hall", TOWN, 4, 285));
  }

  /** One for all tests: immutable, and no run leaves anything in it. */
  private static final ParcelModel PLAIN = ParcelModel.of(Packings.plain(), journey(7), SETTINGS);

  /** Another, with a warmer. */
  private static final ParcelModel WARMED = ParcelModel.of(warmed(), journey(7), FEW_CELLS);

  private static Parcel warmed() {
    return Packings.warmed(List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
  }

  /** All temperatures and heat flows that were stored. */
  private static double[] values(TransitResult result) {
    DoubleStream all =
        DoubleStream.concat(
            Arrays.stream(result.mean("cup")),
            DoubleStream.concat(
                Arrays.stream(result.coldest("cup")), Arrays.stream(result.hottest("cup"))));
    for (Face face : Face.values()) {
      all = DoubleStream.concat(all, Arrays.stream(result.surface(face)));
      all = DoubleStream.concat(all, Arrays.stream(result.heatFlow(face)));
    }
    return all.toArray();
  }

  private static void assertSameBits(TransitResult expected, TransitResult actual) {
    assertArrayEquals(values(expected), values(actual), 0);
    assertArrayEquals(expected.times(), actual.times(), 0);
    assertEquals(expected.ledger(), actual.ledger());
    assertEquals(expected.coefficients(), actual.coefficients());
    assertEquals(expected.coefficientChange(), actual.coefficientChange());
  }

  /** One of many runs: a delay and quantities anywhere in their ranges. */
  private record Task(Journey journey, Variation variation) {
    static Task random(Journey journey, Random random) {
      Variation variation = Variation.NOMINAL.withOffset(4 * random.nextDouble() - 2);
      for (Factor factor : Factor.values()) {
        variation = variation.with(factor, 2 * random.nextDouble() - 1);
      }
      int leg = random.nextInt(journey.legs().size());
      variation =
          variation
              .withOffsetIn(leg, 4 * random.nextDouble() - 2)
              .withOffsetAt(journey.legs().get(leg).place().name(), random.nextDouble());
      return new Task(journey.delayed(leg, Times.HOUR * random.nextInt(3)), variation);
    }

    TransitResult on(ParcelModel model) {
      return model.run(journey, variation);
    }
  }

  private static List<Task> tasks(int number) {
    Random random = new Random(20260105);
    List<Task> tasks = new ArrayList<>();
    for (int index = 0; index < number; index++) {
      tasks.add(Task.random(journey(5 + index % 3), random));
    }
    return tasks;
  }

  @Test
  void runsOnSeveralThreadsAtOnceHaveTheSameBits() throws Exception {
    ParcelModel model = PLAIN;
    List<Task> tasks = tasks(24);
    List<TransitResult> oneByOne = tasks.stream().map(task -> task.on(model)).toList();
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<TransitResult>> running = new ArrayList<>();
      for (Task task : tasks) {
        running.add(threads.submit(() -> task.on(model)));
      }
      for (int index = 0; index < running.size(); index++) {
        assertSameBits(oneByOne.get(index), running.get(index).get());
      }
    } finally {
      threads.shutdown();
    }
  }

  /** Nor does it matter whether other journeys were run before. */
  @Test
  void aModelHasTheSameBitsForAnyNumberOfThreads() {
    ParcelModel several = ParcelModel.of(Packings.plain(), journey(7), SETTINGS.withThreads(3));
    ParcelModel one = PLAIN;
    TransitResult first = several.run(journey(7), Variation.NOMINAL);
    tasks(6).forEach(task -> task.on(one));
    assertSameBits(first, one.run(journey(7), Variation.NOMINAL));
    for (Task task : tasks(2)) {
      assertSameBits(task.on(one), task.on(several));
    }
    assertEquals(one.reduction(), several.reduction());
  }

  /** Every cell under the coefficients that the reduced run found; the figures of the design. */
  @Test
  void reductionCostsLittle() {
    ParcelModel model = PLAIN;
    List<Task> tasks = new ArrayList<>(tasks(1));
    tasks.add(new Task(journey(7), Variation.NOMINAL));
    for (Task task : tasks) {
      TransitResult reduced = task.on(model);
      TransitResult full = model.runEveryCell(task.journey(), task.variation());
      assertEquals(reduced.coefficients(), full.coefficients());
      assertTrue(full.coefficientChange().orElseThrow() < 0.01);
      assertTrue(reduced.coefficientChange().orElseThrow() < 0.01);
      assertTrue(reduced.reduction().isPresent());
      assertFalse(full.reduction().isPresent());
      assertEquals(0, full.reductionErrorOfColdest("cup"));
      assertTrue(reduced.reductionErrorOfColdest("cup") > 0);
      assertTrue(reduced.engine().startsWith("reduced model, "), reduced.engine());
      assertTrue(full.engine().matches("full solver, [0-9,]+ cells"), full.engine());
      assertArrayEquals(full.mean("cup"), reduced.mean("cup"), 0.02);
      assertArrayEquals(full.coldest("cup"), reduced.coldest("cup"), 0.05);
      assertArrayEquals(full.hottest("cup"), reduced.hottest("cup"), 0.05);
      assertTrue(full.ledger().closes() && reduced.ledger().closes());
      assertEquals(reduced.coldestMoment().time(), full.coldestMoment().time());
      assertEquals(
          full.coldestMoment().field().minimum("cup animal"),
          reduced.coldestMoment().field().minimum("cup animal"),
          0.05);
    }
  }

  /** A field that is made on demand is that of the run itself, in cells as well. */
  @Test
  void aFieldBelongsToItsMoment() {
    ParcelModel model = ParcelModel.of(Packings.plain(), journey(2), FEW_CELLS.full());
    Variation variation = Variation.NOMINAL.with(Factor.WALL_CONDUCTIVITY, 0.7);
    TransitResult result = model.run(journey(2), variation);
    for (Snapshot moment : List.of(result.coldestMoment(), result.hottestMoment())) {
      int row = Arrays.binarySearch(result.times(), moment.time());
      assertEquals(result.coldest("cup")[row], moment.field().minimum("cup animal"), 1e-9);
      assertEquals(result.hottest("cup")[row], moment.field().maximum("cup animal"), 1e-9);
    }
    assertTrue(result.coldestMoment().time() > 0);
  }

  /** Coefficients at the means of seven hours are closer to live ones than to none. */
  @Test
  void freezingIsWorthLittle() {
    double[] frozen = PLAIN.run(journey(7), Variation.NOMINAL).mean("cup");
    TransitSettings coarser =
        new TransitSettings(MESH, Times.HOUR / 2, IntegratorSettings.standard());
    TransitResult live =
        Transit.run(Packings.plain(), journey(7), Variation.NOMINAL, coarser.live());
    assertTrue(live.coefficientChange().isEmpty());
    assertTrue(live.engine().endsWith(" cells: coefficients follow the temperatures"));
    // of a fall of 22 K
    assertArrayEquals(live.mean("cup"), frozen, 0.3);
  }

  /** What happens before a delay does not depend on it. */
  @Test
  void delayChangesNothingBeforeIt() {
    ParcelModel model = PLAIN;
    Journey delayed = journey(7).delayed(0, Times.fromHours(5));
    double[] planned = model.run(journey(7), Variation.NOMINAL).mean("cup");
    double[] later = model.run(delayed, Variation.NOMINAL).mean("cup");
    for (int row = 0; row <= 14; row++) {
      // coefficients of both are found within 0.2 %
      assertEquals(planned[row], later[row], 0.02);
    }
    assertTrue(later[later.length - 1] < planned[planned.length - 1]);
  }

  /** Warmer air is warmer air, whoever says so: the same bits. */
  @Test
  void offsetsStandForWarmerAir() {
    ParcelModel model = PLAIN;
    Journey warm = journey(leg("dock", DOCK, 7, 274), leg("hall", TOWN, 4, 287));
    TransitResult expected = model.run(warm, Variation.NOMINAL);
    Variation everywhere = Variation.NOMINAL.withOffset(2);
    Variation atEach = Variation.NOMINAL.withOffsetAt("dockside", 2).withOffsetAt("town", 2);
    Variation inEach = Variation.NOMINAL.withOffsetIn(0, 2).withOffsetIn(1, 2);
    Variation mixed =
        Variation.NOMINAL.withOffset(1).withOffsetAt("dockside", 1).withOffsetIn(1, 1);
    // the spread is 1 K
    Variation spread = Variation.NOMINAL.with(Factor.AMBIENT, 2);
    for (Variation each : List.of(everywhere, atEach, inEach, mixed, spread)) {
      assertSameBits(expected, model.run(journey(7), each));
    }
    double[] one = model.run(journey(7), Variation.NOMINAL.withOffsetIn(1, 2)).mean("cup");
    double[] none = model.run(journey(7), Variation.NOMINAL).mean("cup");
    // as above, coefficients of both are found within 0.2 %
    assertEquals(none[14], one[14], 0.02);
    assertTrue(one[one.length - 1] > none[none.length - 1] + 0.5);
  }

  @Test
  void quantitiesVaryBetweenTheirEnds() {
    ParcelModel model = WARMED;
    for (Factor factor : Factor.values()) {
      // what matters here; no sun, no pile
      if (factor.matters(warmed(), journey(3))) {
        double[] ends = new double[5];
        for (int index = 0; index < ends.length; index++) {
          Variation variation = Variation.NOMINAL.with(factor, index / 2.0 - 1);
          double[] mean = model.run(journey(3), variation).mean("cup");
          ends[index] = mean[6];
        }
        double sign = Math.signum(ends[4] - ends[0]);
        for (int index = 1; index < ends.length; index++) {
          double step = sign * (ends[index] - ends[index - 1]);
          // gases that diffuse through foam carry next to no heat
          double least = factor == Factor.FOAM_DIFFUSIVITY ? 0 : 0.001;
          assertTrue(step > least, factor.words() + " " + Arrays.toString(ends));
        }
      }
    }
    TransitResult all = model.run(journey(3), Variation.NOMINAL.with(Factor.WARMER_STRENGTH, 0.6));
    TransitResult own = model.run(journey(3), Variation.NOMINAL.withWarmer("pad", 0.6));
    assertSameBits(all, own);
  }

  @Test
  void unknownNamesAreRefused() {
    ParcelModel model = ParcelModel.of(warmed(), journey(3), FEW_CELLS.full());
    assertRefused(
        "warmer: there is no \"pot\". Known: pad.", model, Variation.NOMINAL.withWarmer("pot", 0));
    assertRefused(
        "place: there is no \"harbour\". Known: dockside, town.",
        model,
        Variation.NOMINAL.withOffsetAt("harbour", 0));
    assertRefused(
        "ambient offset of leg 2: there is no such leg; they are counted from 0, the last is 1",
        model,
        Variation.NOMINAL.withOffsetIn(2, 0));
    assertRefused(
        "ambient offset of leg -1: there is no such leg; they are counted from 0, the last is 1",
        model,
        Variation.NOMINAL.withOffsetIn(-1, 0));
    assertRefused(
        "ambient temperature of leg 1, 'hall', with an offset of -100 K: 185 K must lie between"
            + " 200 K and 350 K. It is stated as 285 K.",
        model,
        Variation.NOMINAL.withOffsetIn(1, -100));
    assertEquals(
        "ambient offset of leg 1: 150 K must lie between -100 K and 100 K. It is a difference of"
            + " temperatures.",
        assertThrows(InvalidInputException.class, () -> Variation.NOMINAL.withOffsetIn(1, 150))
            .getMessage());
  }

  private static void assertRefused(String message, ParcelModel model, Variation variation) {
    assertEquals(
        message,
        assertThrows(InvalidInputException.class, () -> model.run(journey(3), variation))
            .getMessage());
    assertThrows(InvalidInputException.class, () -> model.runEveryCell(journey(3), variation));
  }

  private static void assertRefused(String part, ParcelModel model, Journey journey) {
    String message =
        assertThrows(InvalidInputException.class, () -> model.run(journey, Variation.NOMINAL))
            .getMessage();
    assertTrue(message.contains(part), message);
    assertTrue(message.endsWith("build it for this journey as well"), message);
  }

  @Test
  void whatTheModelWasNotBuiltForIsRefused() {
    assertRefused("lets zMax meet the sun", PLAIN, sunny(3));
    Leg dock = leg("dock", DOCK, 3, 272);
    Contact.Condition warm = new Contact.Neighbour(TimeFunction.constant(300), 0.1);
    Contact insulated = Contact.whole(Face.X_MIN, new Contact.Insulated());
    ParcelModel stacked =
        ParcelModel.of(
            Packings.plain(),
            List.of(journey(touching(dock, insulated))),
            SETTINGS,
            ModelScope.NOMINAL);
    assertTrue(stacked.run(journey(dock), Variation.NOMINAL).outcome().isCompleted());
    assertRefused(
        "lets part 1 of xMin meet",
        stacked,
        journey(touching(dock, Contact.whole(Face.X_MIN, warm))));
    assertRefused(
        "contact on the front: ",
        stacked,
        journey(touching(dock, Contact.whole(Face.Y_MIN, new Contact.Insulated()))));
    Contact half =
        new Contact(Face.X_MIN, new Range(0, 0.5), new Range(0, 1), new Contact.Insulated());
    assertRefused("contact on the left: ", stacked, journey(touching(dock, half)));
    assertThrows(
        InvalidInputException.class, () -> ParcelModel.of(Packings.plain(), List.of(), SETTINGS));
  }

  /** Each journey as with a model of its own; and what none of them is. */
  @Test
  void oneModelServesSeveralJourneys() {
    Leg dock = leg("dock", DOCK, 3, 272);
    Contact warm =
        Contact.whole(Face.X_MIN, new Contact.Neighbour(TimeFunction.constant(300), 0.1));
    List<Journey> journeys = List.of(journey(3), sunny(3), journey(touching(dock, warm)));
    ParcelModel model = ParcelModel.of(Packings.plain(), journeys, SETTINGS, ModelScope.NOMINAL);
    for (Journey each : journeys) {
      TransitResult result = model.run(each, Variation.NOMINAL);
      TransitResult full = model.runEveryCell(each, Variation.NOMINAL);
      assertArrayEquals(full.mean("cup"), result.mean("cup"), 0.02);
      assertArrayEquals(full.coldest("cup"), result.coldest("cup"), 0.05);
      assertArrayEquals(full.hottest("cup"), result.hottest("cup"), 0.05);
      ParcelModel own =
          ParcelModel.of(Packings.plain(), List.of(each), SETTINGS, ModelScope.NOMINAL);
      // what two reductions leave, and conductivities of cells at the means of another journey
      double[] expected = own.run(each, Variation.NOMINAL).mean("cup");
      assertArrayEquals(expected, result.mean("cup"), 0.05);
    }
    Sunshine less =
        Sunshine.on(Face.Z_MAX, TimeFunction.constant(100), SolarAbsorptance.KRAFT_BOARD);
    Leg both = touching(dock, warm);
    Journey other = journey(both.in(both.surroundings().under(less)));
    TransitResult reduced = model.run(other, Variation.NOMINAL);
    TransitResult full = model.runEveryCell(other, Variation.NOMINAL);
    assertArrayEquals(full.mean("cup"), reduced.mean("cup"), 0.02);
    assertArrayEquals(full.coldest("cup"), reduced.coldest("cup"), 0.05);
  }

  @Test
  void fullBuildsNoReducedModel() {
    ParcelModel model = ParcelModel.of(Packings.plain(), journey(1), FEW_CELLS.full());
    assertTrue(model.reduction().isEmpty());
    assertEquals(0, model.settingsAtHand());
    TransitResult result = model.run(journey(1), Variation.NOMINAL);
    assertTrue(result.engine().matches("full solver, [0-9,]+ cells"), result.engine());
    assertTrue(result.coefficientChange().isEmpty());
    assertTrue(PLAIN.settingsAtHand() > 0);
  }

  @Test
  void aPackMeltsAsOneBodyUnlessEveryCellIsStepped() {
    Placement lid = Placement.onFace(Face.Z_MAX, Mounting.taped());
    PackClass gel =
        new PackClass(
            "gel",
            Materials.ICE_PACK,
            new Dimensions(0.05, 0.04, 0.01),
            0.015,
            0,
            Source.assumed("made up"));
    Parcel chilled =
        Packings.plain()
            .withPacks(
                List.of(new PlacedPack("pack", gel, lid, new PackStart.AtTemperature(258.15))));
    TransitResult body = Transit.run(chilled, journey(1), Variation.NOMINAL, FEW_CELLS);
    assertTrue(body.engine().startsWith("reduced model, "), body.engine());
    TransitResult cells = Transit.run(chilled, journey(1), Variation.NOMINAL, FEW_CELLS.full());
    assertTrue(cells.engine().startsWith("full solver, "), cells.engine());
    assertTrue(cells.reduction().isEmpty());
    int last = cells.times().length - 1;
    double liquid = cells.liquidFraction("pack")[last];
    assertTrue(liquid > 0.1, "liquid " + liquid);
    assertEquals(liquid, body.liquidFraction("pack")[last], 0.06);
    assertTrue(body.ledger().closes());
  }

  /** Air that interrupts who asks for its temperature: in the middle of a build. */
  private record Interrupting(double kelvin) implements TimeFunction {
    @Override
    public double at(double time) {
      Thread.currentThread().interrupt();
      return kelvin;
    }
  }

  @Test
  void anInterruptStopsABuild() {
    Journey interrupting = journey(leg("dock", DOCK, 7, new Interrupting(272)));
    assertThrows(
        CancellationException.class,
        () -> ParcelModel.of(Packings.plain(), interrupting, SETTINGS));
    assertTrue(Thread.interrupted(), "the interrupt must stay visible");
    TransitResult part = PLAIN.run(interrupting, Variation.NOMINAL);
    assertTrue(Thread.interrupted(), "the interrupt must stay visible");
    assertEquals(0, assertInstanceOf(Outcome.Stopped.class, part.outcome()).lastTime());
    assertArrayEquals(new double[] {0}, part.times());
    assertEquals(294, part.mean("cup")[0], 1e-3);
    assertEquals(294, part.coldestMoment().field().mean("cup animal"), 1e-3);
    Thread.interrupted();
  }

  @Test
  void aRunThatDidNotReachTheEndIsNoWholeHistory() {
    ParcelModel model = ParcelModel.of(Packings.plain(), journey(1), FEW_CELLS.full());
    TransitResult whole = model.run(journey(1), Variation.NOMINAL);
    assertSame(whole, whole.requireCompleted());
    TransitResult part =
        model.run(journey(1), Variation.NOMINAL, (done, total) -> ProgressListener.Signal.STOP);
    Exception stop = assertThrows(CancellationException.class, part::requireCompleted);
    assertEquals("stopped by the listener after 0.5 h of 5 h", stop.getMessage());
    assertTrue(
        part.toString().startsWith("sample, 5.0 h: stopped by the listener after 0.5 h of 5 h"),
        part.toString());
  }

  /** A run that stopped keeps its moments; the way to one of them can be interrupted as well. */
  @Test
  void anInterruptOnTheWayToAFieldIsTold() {
    TransitResult result =
        ParcelModel.of(Packings.plain(), journey(1), FEW_CELLS.full())
            .run(journey(1), Variation.NOMINAL);
    assertTrue(result.coldestMoment().time() > 0);
    Thread.currentThread().interrupt();
    assertThrows(CancellationException.class, () -> result.coldestMoment().field());
    assertTrue(Thread.interrupted(), "the interrupt must stay visible");
  }

  @Test
  void aKeptResultWeighsLittle() {
    Journey days = journey(20);
    Variation variation = Variation.NOMINAL.with(Factor.WALL_CONDUCTIVITY, 0.5);
    TransitSettings quarters =
        new TransitSettings(MESH, Times.HOUR / 4, IntegratorSettings.standard());
    ParcelModel model = ParcelModel.of(Packings.plain(), days, quarters);
    ParcelModel cells = ParcelModel.of(Packings.plain(), days, quarters.full());
    for (TransitResult result :
        List.of(
            model.run(days, variation),
            model.runEveryCell(days, variation),
            cells.run(days, variation))) {
      long bytes = Weight.of(result);
      // the rows at least: 97 of 27 values
      assertTrue(bytes > 97 * 27 * Double.BYTES, bytes + " bytes");
      assertTrue(bytes <= MOST_BYTES, result.engine() + ": " + bytes + " bytes");
    }
  }

  /** Stages with nearly equal coefficients share them, which costs less than 0.05 K. */
  @Test
  void sharingCostsLittleOnTemplates() {
    double[] hours = {0, 6, 15, 30, 39, 54, 63, 80};
    double[] kelvin = {279, 271, 268, 281, 270, 283, 272, 280};
    TimeFunction weather =
        Ambient.series(Arrays.stream(hours).map(Times::fromHours).toArray(), kelvin);
    Sunshine sun =
        Sunshine.on(Face.Z_MAX, TimeFunction.constant(200), SolarAbsorptance.KRAFT_BOARD);
    List<Journey> journeys = new ArrayList<>();
    for (JourneyTemplate template : JourneyTemplates.all()) {
      journeys.add(
          template.journey(
              new JourneyTemplate.Start(SEALED.withHour(15), 295),
              new Outdoors(DOCK, weather, 2, sun),
              new Outdoors(TOWN, weather, 2, sun),
              Times.fromHours(6)));
    }
    // whether coefficients are shared does not depend on what else a model may vary
    ParcelModel model = ParcelModel.of(warmed(), journeys, FEW_CELLS, ModelScope.NOMINAL);
    ParcelModel alone = model.sharing(1e-9);
    double offset = -2;
    double largest = 0;
    for (Journey journey : journeys) {
      Task task = new Task(journey, Variation.NOMINAL.withOffset(offset));
      offset += 2;
      TransitResult shared = task.on(model);
      TransitResult own = task.on(alone);
      assertTrue(shared.reduction().isPresent(), journey.toString());
      assertTrue(own.coefficientChange().orElseThrow() < 1e-3, journey.toString());
      double[] expected = values(own);
      double[] actual = values(shared);
      int temperatures = 3 * shared.times().length;
      for (int index = 0; index < temperatures; index++) {
        largest = Math.max(largest, Math.abs(expected[index] - actual[index]));
      }
    }
    assertTrue(largest > 1e-6 && largest < 0.05, largest + " K");
  }

  @Test
  void theEndsOfRangesAreSpanned() {
    ParcelModel model = PLAIN;
    for (End end : List.of(End.LOW, End.HIGH)) {
      Variation variation = Variation.NOMINAL;
      for (Factor factor : Factor.values()) {
        variation = variation.with(factor, end);
      }
      TransitResult reduced = model.run(journey(7), variation);
      TransitResult full = model.runEveryCell(journey(7), variation);
      assertArrayEquals(full.mean("cup"), reduced.mean("cup"), 0.02);
      assertArrayEquals(full.coldest("cup"), reduced.coldest("cup"), 0.05);
      assertArrayEquals(full.hottest("cup"), reduced.hottest("cup"), 0.05);
    }
  }

  /** Extremes lie at edges, whose temperatures depend on the ratio of what conducts around them. */
  @Test
  void fillAndCupAirNeedNotGoTogether() {
    Variation thickFill = Variation.NOMINAL.with(Factor.FILL_CONDUCTIVITY, 0.8);
    for (Variation each : List.of(thickFill, thickFill.with(Factor.CUP_AIR, -0.8))) {
      TransitResult reduced = PLAIN.run(journey(7), each);
      TransitResult full = PLAIN.runEveryCell(journey(7), each);
      assertArrayEquals(full.coldest("cup"), reduced.coldest("cup"), 0.05);
      assertArrayEquals(full.hottest("cup"), reduced.hottest("cup"), 0.05);
    }
  }

  /** A model that is asked for less gives the same, to the error of a reduction, and no more. */
  @Test
  void aModelGivesWhatItsScopeSays() throws IOException {
    Parcel parcel = warmed();
    Journey journey = journey(7);
    Variation warmer =
        Variation.NOMINAL.with(Factor.AMBIENT, End.HIGH).with(Factor.WARMER_STRENGTH, End.HIGH);
    Variation foam = Variation.NOMINAL.with(Factor.WALL_CONDUCTIVITY, End.HIGH);
    for (ModelScope scope : ModelScope.values()) {
      ParcelModel model =
          scope == ModelScope.ALL
              ? WARMED
              : ParcelModel.of(parcel, List.of(journey), FEW_CELLS, scope);
      boolean isRough = scope == ModelScope.ROUGH_MEANS;
      boolean nominalAlone =
          isRough || scope == ModelScope.NOMINAL || scope == ModelScope.NOMINAL_MEANS;
      boolean meansAlone =
          isRough || scope == ModelScope.MEANS || scope == ModelScope.NOMINAL_MEANS;
      double closeness = isRough ? 0.3 : 0.02;
      for (Variation each : List.of(Variation.NOMINAL, warmer)) {
        assertArrayEquals(
            WARMED.means(journey, each)[0], model.means(journey, each)[0], closeness, scope.name());
      }
      if (nominalAlone) {
        assertThrows(IllegalStateException.class, () -> model.means(journey, foam));
      } else {
        assertArrayEquals(
            WARMED.means(journey, foam)[0], model.means(journey, foam)[0], 0.02, scope.name());
      }
      assertEquals(meansAlone, model.reduction().isEmpty());
      if (meansAlone) {
        assertThrows(IllegalStateException.class, () -> model.run(journey, Variation.NOMINAL));
      } else {
        assertArrayEquals(
            WARMED.run(journey, warmer).hottest("pad"),
            model.run(journey, warmer).hottest("pad"),
            0.1,
            scope.name());
      }
      assertStoredIsTheSame(model, journey, List.of(warmer, foam), nominalAlone);
    }
    assertArrayEquals(
        WARMED.run(journey, foam).mean("cup"),
        WARMED.means(journey, foam)[0],
        1e-9,
        "the same means");
  }

  /** What odds need of hot places, without a model of extremes. */
  @Test
  void hotPlacesInReachAreThoseOfAWholeRun() {
    Journey journey = journey(7);
    TransitResult whole = WARMED.run(journey, Variation.NOMINAL);
    double[] expected = whole.hottestPlace("cup");
    Arrays.setAll(expected, row -> expected[row] - whole.mean("cup")[row]);
    assertTrue(Arrays.stream(expected).max().orElseThrow() > 1, "the warmer is felt");
    for (ModelScope scope : List.of(ModelScope.MEANS, ModelScope.NOMINAL_MEANS)) {
      ParcelModel model = ParcelModel.of(warmed(), List.of(journey), FEW_CELLS, scope);
      assertArrayEquals(expected, model.hotterInReach(journey)[0], 0.1, scope.name());
    }
    ParcelModel rough =
        ParcelModel.of(warmed(), List.of(journey), FEW_CELLS, ModelScope.ROUGH_MEANS);
    assertThrows(InvalidInputException.class, () -> rough.hotterInReach(journey));
  }

  /** What a coarser model knows is as good to start from as what a small model would find. */
  @Test
  void anotherModelStartsFromWhatOneKnows() {
    List<Journey> journeys = List.of(journey(7));
    ParcelModel rough = ParcelModel.of(warmed(), journeys, FEW_CELLS, ModelScope.ROUGH_MEANS);
    assertArrayEquals(
        ParcelModel.of(warmed(), journeys, FEW_CELLS, ModelScope.MEANS)
            .means(journey(7), Variation.NOMINAL),
        rough
            .another(journeys, FEW_CELLS, ModelScope.MEANS, ProgressListener.NONE)
            .means(journey(7), Variation.NOMINAL),
        "on the same grid, the same bits");
    TransitSettings finer = FEW_CELLS.meshScaled(0.7);
    ParcelModel alone = ParcelModel.of(warmed(), journeys, finer, ModelScope.NOMINAL);
    ParcelModel after = rough.another(journeys, finer, ModelScope.NOMINAL, ProgressListener.NONE);
    assertTrue(after.cells() > rough.cells());
    assertArrayEquals(
        alone.run(journey(7), Variation.NOMINAL).coldest("cup"),
        after.run(journey(7), Variation.NOMINAL).coldest("cup"),
        0.05);
    assertThrows(
        InvalidInputException.class,
        () -> rough.another(List.of(sunny(3)), finer, ModelScope.NOMINAL, ProgressListener.NONE));
  }

  /** Read again it would settle as usual: it is not written at all. */
  @Test
  void aModelThatSettlesFinelyIsNotStored() {
    DataOutputStream out = new DataOutputStream(new ByteArrayOutputStream());
    for (ModelScope scope : List.of(ModelScope.NOMINAL, ModelScope.ROUGH_MEANS)) {
      ParcelModel model = ParcelModel.of(warmed(), List.of(journey(3)), FEW_CELLS, scope);
      IllegalStateException refused =
          assertThrows(IllegalStateException.class, () -> model.settlingFinely().write(out));
      assertTrue(refused.getMessage().startsWith("a model that settles finely is not stored"));
    }
    assertEquals(0, out.size());
  }

  /** Runs depend on how it burns and leaks, too; a name changes nothing. */
  @Test
  void onlyItsNameMayBeAnotherWhenAModelIsRead() throws IOException {
    Parcel parcel = warmed();
    ParcelModel model =
        ParcelModel.of(parcel, List.of(journey(3)), FEW_CELLS, ModelScope.NOMINAL_MEANS);
    byte[] stored = stored(model);
    ParcelModel named = read(stored, parcel.named("another"));
    assertEquals("another", named.parcel().name());
    assertArrayEquals(
        model.means(journey(3), Variation.NOMINAL), named.means(journey(3), Variation.NOMINAL));
    PlacedWarmer pad = parcel.warmers().get(0);
    Container cup = parcel.containers().get(0);
    Vessel.BoxCup vessel = (Vessel.BoxCup) cup.vessel();
    for (Parcel other :
        List.of(
            parcel.withOpenings(new Openings(Openings.LOOSE_GAP, List.of())),
            parcel.withOpenings(
                new Openings(Openings.CLOSED_GAP, List.of(new Vent(Face.X_MIN, 1, 0.004)))),
            parcel.withWarmers(List.of(pad.covered(FilmCover.TAPED_OVER))),
            parcel.withWarmers(List.of(new PlacedWarmer("pad", pad.warmer(), pad.placement(), 60))),
            parcel.withWarmers(List.of(pad.with(Packings.steady(2)))),
            parcel.withWarmers(
                List.of(Packings.pad(pad.warmer(), Face.Z_MAX, new Mounting(0, 0.05)))),
            parcel.withWalls(
                parcel.walls().with(new Joints(List.of(Axis.Z, Axis.Y, Axis.X), 0, 1e-4))),
            parcel.at(0.5, 0),
            Packings.parcel(
                List.of(
                    new Container(
                        cup.name(),
                        new Vessel.BoxCup(
                            vessel.inner(), new WallLayer(vessel.wall().material(), 0.002)),
                        cup.position(),
                        cup.bedding(),
                        cup.occupant())),
                parcel.warmers()))) {
      String refused =
          assertThrows(InvalidInputException.class, () -> read(stored, other)).getMessage();
      assertTrue(
          refused.endsWith(
              "is not the one that the model was built for; only its name may be another"),
          refused);
    }
  }

  @Test
  void whatEndsEarlyIsNoStoredModel() throws IOException {
    ParcelModel model =
        ParcelModel.of(Packings.plain(), List.of(journey(3)), FEW_CELLS, ModelScope.ROUGH_MEANS);
    byte[] stored = stored(model);
    assertEquals(
        "stored model, magic number at byte 0: the data end here",
        assertThrows(ModelFormatException.class, () -> read(new byte[0], Packings.plain()))
            .getMessage());
    // in each part, and wherever it is cut
    for (int length :
        new int[] {3, 8, 11, 14, 16, 40, stored.length / 2, stored.length - 4, stored.length - 1}) {
      byte[] cut = Arrays.copyOf(stored, length);
      String refused =
          assertThrows(ModelFormatException.class, () -> read(cut, Packings.plain())).getMessage();
      assertTrue(refused.contains("the data end"), length + ": " + refused);
    }
  }

  private static byte[] stored(ParcelModel model) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    model.write(new DataOutputStream(bytes));
    return bytes.toByteArray();
  }

  private static ParcelModel read(byte[] stored, Parcel parcel) throws IOException {
    return ParcelModel.read(new DataInputStream(new ByteArrayInputStream(stored)), parcel);
  }

  /** Bit by bit, and with the same limits. */
  private static void assertStoredIsTheSame(
      ParcelModel model, Journey journey, List<Variation> runs, boolean nominalAlone)
      throws IOException {
    Variation nominal = runs.get(0);
    Variation foam = runs.get(1);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    model.write(new DataOutputStream(bytes));
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes.toByteArray()));
    ParcelModel read = ParcelModel.read(in, model.parcel());
    assertEquals(0, in.available());
    for (double offset : new double[] {0, -9, 14}) {
      Variation other = nominal.withOffset(offset).withOffsetIn(1, 5);
      assertArrayEquals(
          model.means(journey, other), read.means(journey, other), () -> offset + " K");
    }
    assertEquals(model.reduction(), read.reduction());
    assertEquals(model.cells(), read.cells());
    if (model.reduction().isPresent()) {
      assertArrayEquals(
          model.run(journey, nominal).hottest("pad"), read.run(journey, nominal).hottest("pad"));
    } else {
      assertThrows(IllegalStateException.class, () -> read.run(journey, nominal));
    }
    if (nominalAlone) {
      assertThrows(IllegalStateException.class, () -> read.means(journey, foam));
    } else {
      assertArrayEquals(model.means(journey, foam), read.means(journey, foam));
    }
  }
}
