package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;
import stenotherm.validation.verification.Body.Drive;
import stenotherm.validation.verification.Body.Kind;
import stenotherm.validation.verification.Body.Part;
import stenotherm.validation.verification.Body.Scale;
import stenotherm.validation.verification.Body.Surface;

/**
 * What steady states of all bodies have in common, from theorems on div(k grad T) + q = 0 that its
 * finite volumes keep: the matrix is symmetric, positive definite and of non-positive
 * off-diagonals.
 */
class SteadyProperties {
  private static final double HOT = 330;
  private static final double COLD = 270;

  /** The linear solver's tolerance is 1e-9 K in an energy norm; single cells may be off by more. */
  private static final double SOLVED = 1e-6;

  private static double[] cells(ConductionProblem problem) {
    return Body.cells(SteadySolver.solve(problem).field(), problem.network().grid());
  }

  /** Two solutions of one system: the solver's tolerance, and round-off of the largest value. */
  private static double tolerance(double[] field) {
    double largest = 1;
    for (double temperature : field) {
      largest = Double.isNaN(temperature) ? largest : Math.max(largest, Math.abs(temperature));
    }
    return SOLVED + 1e-9 * largest;
  }

  @Property(seed = "3101", tries = 60)
  void turnedAndMirroredBodiesHaveTheTurnedAndMirroredField(
      @ForAll(supplier = RandomBodies.class) Body body,
      @ForAll @IntRange(max = 5) int permutation,
      @ForAll Axis mirrored) {
    List<Axis> order = new ArrayList<>(List.of(Axis.values()));
    order.add(0, order.remove(permutation % 3));
    if (permutation >= 3) {
      order.add(order.remove(1));
    }
    ConductionProblem one = body.problem();
    ConductionProblem other = body.turned(order).mirrored(mirrored).problem();
    double[] field = cells(one);
    double[] turned = cells(other);
    RectilinearGrid grid = one.network().grid();
    RectilinearGrid image = other.network().grid();
    for (int cell = 0; cell < field.length; cell++) {
      int[] at = new int[3];
      for (Axis axis : Axis.values()) {
        int position = grid.position(order.get(axis.ordinal()), cell);
        at[axis.ordinal()] = axis == mirrored ? image.count(axis) - 1 - position : position;
      }
      assertEquals(field[cell], turned[image.cell(at[0], at[1], at[2])], tolerance(field));
    }
  }

  /** One watt in one block warms another by as much as one there warms the first. */
  @Property(seed = "3102", tries = 60)
  void heatingIsReciprocal(
      @ForAll(supplier = RandomBodies.class) Body body,
      @ForAll @IntRange(max = 4) int first,
      @ForAll @IntRange(max = 4) int second) {
    Body idle = body.inSurroundingsAt(290).withParts(part -> part.withPower(Drive.constant(0)));
    List<Integer> visible = body.visible();
    int one = visible.get(first % visible.size());
    int other = visible.get(second % visible.size());
    double oneByOther = rise(idle, other, one);
    double otherByOne = rise(idle, one, other);
    double largest = Math.max(rise(idle, one, one), rise(idle, other, other));
    assertEquals(oneByOther, otherByOne, SOLVED + 1e-9 * largest);
    // the mean of a heated block is nowhere exceeded by that of another
    assertTrue(Math.max(oneByOther, otherByOne) <= largest * (1 + 1e-9) + SOLVED);
  }

  private static double rise(Body idle, int heated, int read) {
    ConductionProblem problem =
        idle.withPart(heated, part -> part.withPower(Drive.constant(1))).problem();
    return SteadySolver.solve(problem).field().mean(idle.parts().get(read).name()) - 290;
  }

  /** What powers, fluxes and ambients do adds up. */
  @Property(seed = "3103", tries = 60)
  void causesAddUp(@ForAll(supplier = RandomBodies.class) Body body) {
    Body idle = body.inSurroundingsAt(290);
    double[] none = cells(idle.withParts(p -> p.withPower(Drive.constant(0))).problem());
    double[] heated = cells(idle.problem());
    double[] surrounded = cells(body.withParts(p -> p.withPower(Drive.constant(0))).problem());
    double[] both = cells(body.problem());
    double tolerance = tolerance(heated) + tolerance(surrounded) + tolerance(both);
    for (int cell = 0; cell < both.length; cell++) {
      assertEquals(heated[cell] + surrounded[cell] - none[cell], both[cell], tolerance);
    }
  }

  /** Lengths, conductivities, films, powers scaled together leave temperatures as they are. */
  @Property(seed = "3104", tries = 60)
  void similarBodiesHaveTheSameTemperatures(
      @ForAll(supplier = RandomBodies.class) Body body,
      @ForAll @DoubleRange(min = 0.1, max = 10) double length,
      @ForAll @DoubleRange(min = 0.1, max = 10) double conductivity) {
    double[] field = cells(body.problem());
    double[] similar = cells(body.scaled(new Scale(length, conductivity, 1)).problem());
    assertArrayEquals(field, similar, tolerance(field));
  }

  /** Every surface at one of two temperatures, nothing heated. */
  private static Body betweenTwoTemperatures(Body body) {
    return body.unheated()
        .withSurfaces(
            surface ->
                surface.isTemperature()
                    ? surface.withDrive(Drive.constant(surface.drive().before() > 290 ? HOT : COLD))
                    : surface);
  }

  /** Heat that leaves the hot surfaces for the cold ones [W]. */
  private static double loss(Body body) {
    SteadySolution solution = SteadySolver.solve(body.problem());
    double loss = 0;
    for (Face face : Face.values()) {
      Surface surface = body.faces().get(face);
      if (surface.isTemperature() && surface.drive().before() == HOT) {
        loss += solution.heatFlows().getOrDefault(face.label(), 0.0);
      }
    }
    if (body.atAir().drive().before() == HOT) {
      loss += solution.heatFlows().getOrDefault("air", 0.0);
    }
    return loss;
  }

  /** One part with a lower conductivity, or with a higher resistance around it. */
  private static Body insulated(Body body, int which, double factor, boolean byResistance) {
    int index = which % body.parts().size();
    Body insulated =
        body.withPart(
            index,
            part ->
                byResistance
                    ? part.withResistance(part.resistance() + 1 - factor)
                    : part.withConductivity(part.material().conductivity() * factor));
    // cells start finer where conductivities differ strongly: another grid proves nothing
    Assume.that(lines(body).equals(lines(insulated)));
    return insulated;
  }

  private static List<List<Double>> lines(Body body) {
    RectilinearGrid grid = body.problem().network().grid();
    return Arrays.stream(Axis.values())
        .map(axis -> Arrays.stream(grid.lines(axis)).boxed().toList())
        .toList();
  }

  /**
   * Insulating any part of it, wherever it is, never raises what a body loses: its conductance is
   * the least of a quadratic form that falls with every conductance (Dirichlet's principle).
   */
  @Property(seed = "3105", tries = 60)
  void insulationNeverRaisesTheLoss(
      @ForAll(supplier = RandomBodies.class) Body random,
      @ForAll @IntRange(max = 4) int which,
      @ForAll boolean byResistance,
      @ForAll @DoubleRange(min = 0.01, max = 1) double factor) {
    Body body = betweenTwoTemperatures(random);
    double loss = loss(body);
    double slack = 1e-9 * Math.abs(loss) + 1e-9;
    assertNotBelow(loss(insulated(body, which, factor, byResistance)), loss, slack);
    Face face = Face.values()[which];
    if (body.faces().get(face).kind() == Kind.FILM) {
      double film = body.faces().get(face).coefficient() * factor;
      assertNotBelow(loss(body.withFace(face, s -> s.withCoefficient(film))), loss, slack);
    }
  }

  /** Nor does it ever cool what is heated inside. */
  @Property(seed = "3106", tries = 60)
  void insulationNeverCoolsWhatIsHeated(
      @ForAll(supplier = RandomBodies.class) Body random,
      @ForAll @IntRange(max = 4) int heated,
      @ForAll @IntRange(max = 4) int which,
      @ForAll boolean byResistance,
      @ForAll @DoubleRange(min = 0.01, max = 1) double factor) {
    Body body = random.inSurroundingsAt(290).withParts(p -> p.withPower(Drive.constant(0)));
    List<Integer> visible = body.visible();
    int source = visible.get(heated % visible.size());
    double rise = rise(body, source, source);
    Body insulated = insulated(body, which, factor, byResistance);
    assertNotBelow(rise, rise(insulated, source, source), SOLVED + 1e-9 * rise);
  }

  private static void assertNotBelow(double bound, double value, double slack) {
    assertTrue(value >= bound - slack, () -> value + " is " + (bound - value) + " below " + bound);
  }

  @Property(seed = "3107", tries = 60)
  void warmerSurroundingsNeverCoolAnyPoint(
      @ForAll(supplier = RandomBodies.class) Body body,
      @ForAll Face face,
      @ForAll @DoubleRange(min = 0.1, max = 30) double warmer) {
    double[] before = cells(body.problem());
    Body changed =
        body.withFace(
            face,
            surface ->
                surface.kind() == Kind.ADIABATIC
                    ? surface
                    : surface.withDrive(surface.drive().map(value -> value + warmer)));
    double[] after = cells(changed.problem());
    double tolerance = tolerance(before);
    for (int cell = 0; cell < before.length; cell++) {
      assertTrue(Double.isNaN(before[cell]) || after[cell] >= before[cell] - tolerance);
    }
  }

  /**
   * The field approaches a limit as the grid is refined: the second halving of the cells changes
   * the means over eighths of the box by less than the first. Edges where conductivities meet are
   * singular, so that the order may be far below two.
   */
  @Property(seed = "3108", tries = 12)
  void refinementConverges(@ForAll(supplier = RandomBodies.class) Body random) {
    double side = random.size().x();
    // in a cube all cells are halved, those of flat bodies along the longer axes only
    Point cube = new Point(side, side, side);
    Body body =
        new Body(cube, random.parts(), random.air(), random.faces(), random.atAir(), random.jump())
            // up to 1 : 10; at edges of 1 : 10,000 grids as coarse as these do not converge yet
            .withParts(
                part -> part.withConductivity(Math.pow(part.material().conductivity(), 0.25)))
            .withSurfaces(
                // where held surfaces of different temperature meet, heat grows without limit
                surface ->
                    surface.kind() == Kind.HELD
                        ? new Surface(Kind.FILM, surface.coefficient(), surface.drive())
                        : surface);
    double[][] eighths = new double[3][];
    for (int grid = 0; grid < 3; grid++) {
      eighths[grid] = means(body.problem(body.mesh(Body.PARTS << grid), 0, 0));
    }
    double first = rootMeanSquare(eighths[1], eighths[0]);
    double second = rootMeanSquare(eighths[2], eighths[1]);
    assertTrue(second < first + SOLVED, first + " K, then " + second + " K");
  }

  /** Means over parts of an eighth of a cube along each axis; NaN where there is air. */
  private static double[] means(ConductionProblem problem) {
    double[] field = cells(problem);
    RectilinearGrid grid = problem.network().grid();
    double[] sum = new double[Body.PARTS * Body.PARTS * Body.PARTS];
    double[] volume = new double[sum.length];
    for (int cell = 0; cell < field.length; cell++) {
      int part = 0;
      for (Axis axis : List.of(Axis.Z, Axis.Y, Axis.X)) {
        int position = grid.position(axis, cell);
        double middle = (grid.line(axis, position) + grid.line(axis, position + 1)) / 2;
        part = Body.PARTS * part + (int) (Body.PARTS * middle / grid.layout().domain().size(axis));
      }
      sum[part] += field[cell] * grid.volume(cell);
      volume[part] += grid.volume(cell);
    }
    for (int part = 0; part < sum.length; part++) {
      sum[part] /= volume[part];
    }
    return sum;
  }

  private static double rootMeanSquare(double[] one, double[] other) {
    double sum = 0;
    int count = 0;
    for (int cell = 0; cell < one.length; cell++) {
      if (!Double.isNaN(one[cell])) {
        sum += Math.pow(one[cell] - other[cell], 2);
        count++;
      }
    }
    return Math.sqrt(sum / count);
  }

  /** Blocks that do not overlap may be named in any order. */
  @Property(seed = "3109", tries = 40)
  void orderOfDisjointBlocksDoesNotMatter(@ForAll(supplier = RandomBodies.class) Body random) {
    // one slab of eighths for each block: a tower
    List<Part> parts = new ArrayList<>(random.parts());
    for (int index = 1; index < parts.size(); index++) {
      Part part = parts.get(index);
      List<Integer> low = new ArrayList<>(part.extent().low());
      List<Integer> high = new ArrayList<>(part.extent().high());
      low.set(2, 2 * (index - 1));
      high.set(2, 2 * (index - 1) + 2);
      parts.set(index, part.withExtent(new Body.Extent(low, high)));
    }
    List<Part> reversed = new ArrayList<>(List.of(parts.get(0)));
    for (int index = parts.size() - 1; index > 0; index--) {
      reversed.add(parts.get(index));
    }
    double[] one = cells(with(random, parts).problem());
    double[] other = cells(with(random, reversed).problem());
    assertArrayEquals(one, other, "same bits");
  }

  private static Body with(Body body, List<Part> parts) {
    return new Body(body.size(), parts, body.air(), body.faces(), body.atAir(), body.jump());
  }
}
