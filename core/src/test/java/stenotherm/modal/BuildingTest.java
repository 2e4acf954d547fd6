package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Workers;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.ReducibleNetwork;

/** How a basis is found, and what it must do. */
class BuildingTest {
  private static final Workers ALONE = new Workers(1);

  /** Random vectors one of which repeats others, in two batches. */
  private static KrylovBasis basisOf(ReducibleNetwork operator, Workers workers) {
    Random random = new Random(3);
    List<double[]> vectors = new ArrayList<>();
    double[] solid = operator.indicator(Optional.empty());
    for (int n = 0; n < 11; n++) {
      double[] x = operator.vector();
      for (int i = 0; i < x.length; i++) {
        x[i] = solid[i] * random.nextGaussian();
      }
      vectors.add(x);
    }
    double[] repeats = vectors.get(2).clone();
    for (int i = 0; i < repeats.length; i++) {
      repeats[i] -= 3 * vectors.get(7)[i];
    }
    KrylovBasis basis = new KrylovBasis(operator);
    assertEquals(5, basis.add(new ArrayList<>(vectors.subList(0, 5)), 0, workers));
    vectors.add(9, repeats);
    assertEquals(6, basis.add(new ArrayList<>(vectors.subList(5, 12)), 1, workers));
    return basis;
  }

  private static ResolventSolver solver(Configuration configuration) {
    InputGroups groups = new InputGroups(configuration.operator().inputs(), List.of(), Set.of());
    return new ResolventSolver(configuration, ALONE, groups, Set.of());
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  @Test
  void basisIsOrthonormalAndLeavesOutWhatRepeats() {
    RandomBody body = new RandomBody(1, 2);
    ReducibleNetwork operator = new ReducibleNetwork(body.network, body.films());
    KrylovBasis basis = basisOf(operator, ALONE);
    double[] heat = operator.vector();
    for (int j = 0; j < basis.size(); j++) {
      operator.store(basis.vector(j), heat);
      for (int i = 0; i < basis.size(); i++) {
        assertEquals(i == j ? 1 : 0, product(basis.vector(i), heat), 1e-14);
      }
    }
  }

  /** Rows of nodes and the continuous field agree, films, contacts and neighbours included. */
  @Test
  void nodesAreThoseOfTheField() {
    RandomBody body = new RandomBody(6, 4);
    ReducibleNetwork operator = new ReducibleNetwork(body.network, body.films());
    Random random = new Random(6);
    double[] x = operator.vector();
    double[] solid = operator.indicator(Optional.empty());
    for (int i = 0; i < x.length; i++) {
      x[i] = solid[i] * random.nextDouble();
    }
    for (String block : List.of("foam", "animal", "warmer")) {
      ReducibleNetwork.Nodes nodes = operator.new Nodes(block);
      assertArrayEquals(nodes.read(x, new double[8]), nodes.read(x), 1e-12);
      boolean reached = false;
      for (int input = 0; input < 8; input++) {
        double[] inputs = new double[8];
        inputs[input] = 1;
        for (double value : nodes.read(operator.vector(), inputs)) {
          reached |= value != 0;
        }
      }
      assertEquals(reached, nodes.reachedByInputs(), block);
    }
  }

  /** Built up in batches or at once: the triple product of dense matrices. */
  @Test
  void conductanceIsTheTripleProduct() {
    RandomBody body = new RandomBody(1, 2);
    Configuration configuration = new Configuration(body.network, body.films());
    ResolventSolver solver = solver(configuration);
    ReducibleNetwork operator = solver.operator(0);
    KrylovBasis basis = basisOf(operator, ALONE);
    int length = operator.vector().length;
    int size = basis.size();
    DMatrixRMaj g = new DMatrixRMaj(length, length);
    double[] unit = operator.indicator(Optional.empty());
    double[] solid = unit.clone();
    for (int j = 0; j < length; j++) {
      double[] column = operator.vector();
      Arrays.fill(unit, 0);
      unit[j] = solid[j];
      if (solid[j] > 0) {
        operator.conduct(unit, column);
      }
      for (int i = 0; i < length; i++) {
        g.set(i, j, column[i]);
      }
    }
    DMatrixRMaj v = new DMatrixRMaj(length, size);
    for (int j = 0; j < size; j++) {
      for (int i = 0; i < length; i++) {
        v.set(i, j, basis.vector(j)[i]);
      }
    }
    DMatrixRMaj gv = new DMatrixRMaj(length, size);
    DMatrixRMaj expected = new DMatrixRMaj(size, size);
    CommonOps_DDRM.mult(g, v, gv);
    CommonOps_DDRM.multTransA(v, gv, expected);
    double largest = CommonOps_DDRM.elementMaxAbs(expected);
    assertArrayEquals(expected.getData(), solver.conductance(basis), 1e-13 * largest);
    solver = solver(configuration);
    KrylovBasis first = new KrylovBasis(operator);
    first.add(new ArrayList<>(List.of(basis.vector(0).clone(), basis.vector(1).clone())), 0, ALONE);
    solver.conductance(first);
    assertArrayEquals(expected.getData(), solver.conductance(basis), 1e-13 * largest);
  }

  @Test
  void numberOfThreadsChangesNoBit() {
    RandomBody body = new RandomBody(5, 4);
    double[][] films = {body.films(), body.films()};
    double[] factors = {0.9, 1.5};
    ReducedModel[] models = new ReducedModel[2];
    for (int run = 0; run < 2; run++) {
      models[run] =
          body.builder()
              .threads(1 + 2 * run)
              .spanning(films[0], RandomBody.GIVEN)
              .spanning(films[1], factors)
              .build();
    }
    assertArrayEquals(
        models[0].configuration(films[0], factors).rates(),
        models[1].configuration(films[0], factors).rates());
    assertArrayEquals(outputs(models[0], films[0], factors), outputs(models[1], films[0], factors));
  }

  private static double[] outputs(ReducedModel model, double[] films, double[] factors) {
    ModalEngine engine = model.engine(InitialState.uniform(290).with("animal", 294));
    double[] inputs = RandomBody.inputs(new Random(5));
    engine.advance(3000, inputs, inputs);
    engine.use(model.configuration(films, factors));
    engine.advance(3000, inputs, inputs);
    double[] values = new double[RandomBody.PROBES.size()];
    engine.read(values);
    return values;
  }

  /** What was found or done before leaves no trace. */
  @Test
  void otherConfigurationsBeforeChangeNoBit() {
    RandomBody body = new RandomBody(5, 4);
    double[] films = body.films();
    double[] factors = {0.9, 1.5};
    ReducedModel model = body.model(films, body.films());
    double[] expected = outputs(model, films, factors);
    for (int other = 0; other < 5; other++) {
      model.configuration(body.films(), new double[] {0.5 + 0.3 * other, 2 - 0.2 * other});
      outputs(model, body.films(), RandomBody.GIVEN);
    }
    assertArrayEquals(expected, outputs(model, films, factors));
    ReducedModel again = body.model(films, model.spanned().get(1).films());
    again.configuration(films, new double[] {3, 0.2});
    assertArrayEquals(expected, outputs(again, films, factors));
  }

  @Test
  void failuresOfThreadsReachTheCaller() {
    Workers workers = new Workers(3);
    assertThrows(
        IllegalStateException.class,
        () ->
            workers.run(
                8,
                (worker, index) -> {
                  if (index > 2) {
                    throw new IllegalStateException();
                  }
                }));
    assertThrows(
        InvalidInputException.class,
        () -> ReducedModel.builder(new RandomBody(1, 2).network, List.of()).threads(0));
  }

  /**
   * Whichever configuration is named first, all of whose solutions enter the basis: the same
   * answers, within a fifth of what a model may be off, minutes after jumps by some ten kelvins.
   */
  @Property(seed = "4201", tries = 1)
  void anyConfigurationMayComeFirst(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, 4, 3);
    double[][] films = {body.films(), body.films(), body.films()};
    double[][] factors = {{1, 1}, {0.8, 1.4}, {1.2, 0.8}};
    List<ReducedModel> models = new ArrayList<>();
    for (int first = 0; first < 3; first++) {
      ReducedModel.Builder builder = body.builder();
      for (int n = 0; n < 3; n++) {
        builder.spanning(films[(first + n) % 3], factors[(first + n) % 3]);
      }
      models.add(builder.build());
    }
    double[][] values = new double[3][RandomBody.PROBES.size()];
    double[] inputs = RandomBody.inputs(new Random(seed));
    List<ModalEngine> engines =
        models.stream().map(each -> each.engine(InitialState.uniform(290))).toList();
    for (int step = 0; step < 12; step++) {
      for (int model = 0; model < 3; model++) {
        ModalEngine engine = engines.get(model);
        int now = step / 4;
        engine.use(models.get(model).configuration(films[now], factors[now]));
        engine.advance(900, inputs, inputs);
        engine.read(values[model]);
      }
      for (int output = 0; output < values[0].length; output++) {
        boolean isExtreme = output >= 2 && output <= 4;
        double allowed = isExtreme ? 0.01 : 0.004;
        String name = RandomBody.PROBES.get(output).name();
        assertEquals(values[0][output], values[1][output], allowed, name);
        assertEquals(values[0][output], values[2][output], allowed, name);
      }
    }
  }

  /** Of seven configurations four are solved for; steady states of all are right. */
  @Property(seed = "4202", tries = 1)
  void manyConfigurationsShareTheBasisOfFour(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, 4, 3);
    List<double[]> films = new ArrayList<>();
    ReducedModel.Builder builder = body.builder();
    for (int c = 0; c < 7; c++) {
      films.add(body.films());
      builder.spanning(films.get(c), RandomBody.GIVEN);
    }
    ReducedModel model = builder.build();
    assertEquals(7, model.spanned().size());
    double[] inputs = RandomBody.inputs(new Random(seed));
    double[] values = new double[RandomBody.PROBES.size()];
    int exact = 0;
    for (double[] each : films) {
      ModalEngine engine = model.engine(InitialState.uniform(290));
      engine.useCoefficients(each);
      engine.advance(1e9, inputs, inputs);
      engine.read(values);
      double[] expected = body.steady(each, inputs);
      double off = 0;
      for (int output = 0; output < values.length; output++) {
        off = Math.max(off, Math.abs(values[output] - expected[output]));
      }
      assertTrue(off < 0.02, off + " K");
      exact += off < 1e-6 ? 1 : 0;
    }
    assertTrue(exact >= 4, exact + " exact");
  }

  @Test
  void configurationsThatDifferMostAreChosen() {
    RandomBody body = new RandomBody(2, 2);
    List<ResolventSolver> all = new ArrayList<>();
    for (double film : new double[] {5, 5.1, 20, 10, 5.2, 19}) {
      double[] films = new double[6];
      Arrays.fill(films, film);
      all.add(solver(new Configuration(body.network, films)));
    }
    ReducibleNetwork operator = all.get(0).operator(0);
    KrylovBasis basis = new KrylovBasis(operator);
    basis.add(new ArrayList<>(List.of(operator.indicator(Optional.empty()))), -1, ALONE);
    all.get(0).addResolvents(0, 0, 1e-9, basis);
    assertEquals(
        List.of(all.get(0), all.get(2), all.get(3)), FarthestPointSampling.choose(all, basis, 3));
    assertEquals(all, FarthestPointSampling.choose(all, basis, 6));
  }
}
