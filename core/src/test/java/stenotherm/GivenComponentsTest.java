package stenotherm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Animals;
import stenotherm.animal.Exposure;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Point;
import stenotherm.material.Absorbent;
import stenotherm.material.AirLayer;
import stenotherm.material.Behaviour;
import stenotherm.material.FillConvection;
import stenotherm.material.FillLaw;
import stenotherm.material.Materials;
import stenotherm.material.Melting;
import stenotherm.material.TemperatureCorrection;
import stenotherm.warmer.AirFilm;
import stenotherm.warmer.Bench;
import stenotherm.warmer.BenchRun;
import stenotherm.warmer.ControlledPower;
import stenotherm.warmer.HeaterLaw;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.Rating;
import stenotherm.warmer.WarmerFit;
import stenotherm.warmer.Warmers;

/** A part that is null is refused by name where it is handed over, not where it is missed. */
class GivenComponentsTest {
  private static final List<String> PACKAGES =
      List.of(
          "stenotherm.material", "stenotherm.warmer", "stenotherm.animal", "stenotherm.conduction");

  /** What only the library makes. */
  private static final Set<Class<?>> RESULTS =
      Set.of(
          Exposure.class,
          Exposure.Excursions.class,
          Exposure.Excursion.class,
          HeatLedger.class,
          DiscretisationEstimate.class,
          BenchRun.class,
          WarmerFit.class,
          WarmerFit.Fitted.class,
          Port.BoundaryPort.class,
          Port.SourcePort.class);

  private static final Source SOURCE = Source.assumed("made up");
  private static final Range RANGE = new Range(1, 2);
  private static final Melting MELTING = new Melting(new Range(270, 271), 1e5, 1, 2000);
  private static final TimeFunction CONSTANT = TimeFunction.constant(1);
  private static final TemperatureCorrection CORRECTION =
      new TemperatureCorrection(0.004, 283, 250, SOURCE);

  /** One of each kind of record that others make. */
  static Stream<Record> samples() {
    var animal = Animals.LEOPARD_GECKO;
    return Stream.of(
        animal,
        new AnimalBody(0.04, animal.restingShape()),
        animal.tolerance(),
        animal.tolerance().alarm(),
        Materials.PLYWOOD,
        new Absorbent(Materials.DRY_PAPER_TOWEL, Materials.PAPER),
        new AirLayer(HeatDirection.UPWARD, 0.02, 0.9, 0.9),
        new FillConvection(0.04, 0.01, RANGE, SOURCE),
        MELTING,
        CORRECTION,
        new Behaviour.Corrected(CORRECTION),
        new Behaviour.Voids(new FillLaw(0.03, 0.01, 0.9), 283),
        new Behaviour.Melts(MELTING),
        new Behaviour.MeltsAsOneBody(MELTING, 2100, 2.2),
        Warmers.FORTY_HOUR,
        (IronPowder) Warmers.FORTY_HOUR.heat(),
        new AirFilm(1e-8, 0.01, AirFilm.Transport.FICK),
        new PrescribedPower(CONSTANT),
        new ControlledPower("cup", HeaterLaw.thermostat(8, 288, 289)),
        Bench.RATING,
        new Rating(330, 1e5),
        new Boundary.Convection(CONSTANT, CONSTANT),
        new Boundary.PrescribedTemperature(CONSTANT),
        new Boundary.PrescribedFlux(CONSTANT),
        new Probe.Mean("p", "a"),
        new Probe.Maximum("p", "a"),
        new Probe.Minimum("p", "a"),
        new Probe.At("p", new Point(0, 0, 0)),
        new Probe.SurfaceMean("p", "a"),
        new Probe.LiquidFraction("p", "a"),
        new Probe.HeatFlow("p", "a"),
        new InitialState(290, Map.of(), Map.of()),
        IntegratorSettings.standard(),
        ThinResistance.between("a", "b", 1));
  }

  private static boolean holdsObjects(Class<?> record) {
    return Arrays.stream(record.getRecordComponents())
        .anyMatch(component -> !component.getType().isPrimitive());
  }

  @Test
  void everyRecordThatHoldsObjectsHasASample() throws Exception {
    Path classes =
        Path.of(Animals.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Set<Class<?>> found = new HashSet<>();
    for (String name : PACKAGES) {
      String prefix = name + ".";
      try (Stream<Path> files = Files.list(classes.resolve(name.replace('.', '/')))) {
        for (Path file : files.toList()) {
          String type = prefix + file.getFileName().toString().replace(".class", "");
          Class<?> each = type.endsWith("-info") ? Object.class : Class.forName(type);
          if (each.isRecord() && isPublic(each) && holdsObjects(each) && !RESULTS.contains(each)) {
            found.add(each);
          }
        }
      }
    }
    Set<Class<?>> sampled = samples().map(Object::getClass).collect(Collectors.toSet());
    assertEquals(found, sampled);
  }

  private static boolean isPublic(Class<?> type) {
    Class<?> outer = type.getEnclosingClass();
    return Modifier.isPublic(type.getModifiers()) && (outer == null || isPublic(outer));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void aNullIsRefusedByName(Record sample) throws ReflectiveOperationException {
    RecordComponent[] components = sample.getClass().getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Constructor<?> constructor = sample.getClass().getDeclaredConstructor(types);
    for (int index = 0; index < components.length; index++) {
      if (types[index].isPrimitive()) {
        continue;
      }
      Object[] values = new Object[components.length];
      for (int other = 0; other < values.length; other++) {
        values[other] = other == index ? null : components[other].getAccessor().invoke(sample);
      }
      String name = sample.getClass().getSimpleName() + "." + components[index].getName();
      Throwable fault =
          assertThrows(InvocationTargetException.class, () -> constructor.newInstance(values), name)
              .getCause();
      String message = assertInstanceOf(InvalidInputException.class, fault, name).getMessage();
      assertTrue(message.endsWith(": must not be null"), name + ": " + message);
    }
  }
}
