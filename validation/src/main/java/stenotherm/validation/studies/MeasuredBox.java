package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.SurfaceFilm;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.parcel.Dimensions;

/**
 * A box with contents on its floor and air above, in still air: a quarter of it is solved, as two
 * vertical planes of symmetry allow. Films, air layers and materials are those that parcels use.
 *
 * @param inside inner length, breadth and height [m]
 * @param layers layers of all six walls, from the inside out
 * @param contents what stands on the floor
 * @param surroundings air and floor
 */
record MeasuredBox(
    Dimensions inside, List<Bodies.Layer> layers, Contents contents, Surroundings surroundings) {
  static final String MEAN = "contents";
  static final String CORNER = "corner";

  private static final double EMISSIVITY = 0.92;

  MeasuredBox {
    layers = List.copyOf(layers);
  }

  /**
   * A block in the middle of the floor.
   *
   * @param material its material
   * @param height how high it stands [m]
   * @param gap air between it and each side wall [m]; 0 if it touches them
   * @param start temperature of everything at the start [K]
   */
  record Contents(Material material, double height, double gap, double start) {}

  /**
   * Where the box stands.
   *
   * @param ambient temperature of air and floor [K]
   * @param mean temperature at which films and air layers are taken [K]
   * @param underside coefficient of the lower face [W/(m2 K)]
   */
  record Surroundings(TimeFunction ambient, double mean, double underside) {
    /** In still air of one temperature [°C]. */
    static Surroundings of(double celsius, double meanCelsius, double underside) {
      return new Surroundings(
          TimeFunction.constant(Temperatures.fromCelsius(celsius)),
          Temperatures.fromCelsius(meanCelsius),
          underside);
    }
  }

  /** Film of a face in still air, by the direction of the heat [W/(m2 K)]. */
  static double film(HeatDirection flow, double mean) {
    return SurfaceFilm.of(AirMovement.STILL, flow, EMISSIVITY, mean).coefficient();
  }

  private double thickness() {
    return layers.stream().mapToDouble(Bodies.Layer::thickness).sum();
  }

  /** Air that is at rest as a whole, with the resistance of an air layer. */
  private Material air(String name, HeatDirection flow, double thickness) {
    double conductivity =
        AirLayer.ordinary(flow, thickness).effectiveConductivity(surroundings.mean());
    return Material.of(name, conductivity, 1.2, 1007);
  }

  /** Whether heat leaves the contents at the start. */
  private boolean cools() {
    return contents.start() >= surroundings.mean();
  }

  private Layout layout() {
    double halfLength = inside.length() / 2;
    double halfWidth = inside.width() / 2;
    double out = thickness();
    List<Block> blocks = new ArrayList<>();
    for (int layer = layers.size() - 1; layer >= 0; layer--) {
      blocks.add(
          new Block.Solid(
              "layer " + layer,
              new Box(
                  new Point(0, 0, -out),
                  new Point(halfLength + out, halfWidth + out, inside.height() + out)),
              layers.get(layer).material()));
      out -= layers.get(layer).thickness();
    }
    double head = inside.height() - contents.height();
    if (contents.gap() > 0) {
      blocks.add(
          new Block.Solid(
              "air beside",
              Box.ofSize(halfLength, halfWidth, contents.height()),
              air("air beside", HeatDirection.HORIZONTAL, contents.gap())));
    }
    if (head > 1e-6) {
      blocks.add(
          new Block.Solid(
              "air above",
              new Box(
                  new Point(0, 0, contents.height()),
                  new Point(halfLength, halfWidth, inside.height())),
              air("air above", cools() ? HeatDirection.UPWARD : HeatDirection.DOWNWARD, head)));
    }
    blocks.add(
        new Block.Solid(
            MEAN,
            Box.ofSize(halfLength - contents.gap(), halfWidth - contents.gap(), contents.height()),
            contents.material()));
    return new Layout(blocks);
  }

  /** Mean of the contents and a point 10 mm within their upper corner [K], at times [s]. */
  Ladder.Grid history(double width, double stepTolerance, double... times) {
    TimeFunction ambient = surroundings.ambient();
    double sides = film(HeatDirection.HORIZONTAL, surroundings.mean());
    HeatDirection out = cools() ? HeatDirection.UPWARD : HeatDirection.DOWNWARD;
    ConductionProblem problem =
        ConductionProblem.builder(layout(), new MeshControl(0.02, 0.002, 1.4).scaled(width))
            .initial(InitialState.uniform(contents.start()))
            .boundary(Face.X_MAX, convection(sides, ambient))
            .boundary(Face.Y_MAX, convection(sides, ambient))
            .boundary(Face.Z_MAX, convection(film(out, surroundings.mean()), ambient))
            .boundary(Face.Z_MIN, convection(surroundings.underside(), ambient))
            .build();
    Point corner =
        new Point(
            inside.length() / 2 - contents.gap() - 0.01,
            inside.width() / 2 - contents.gap() - 0.01,
            contents.height() - 0.01);
    return Bodies.history(
        problem,
        List.of(new Probe.Mean("mean", MEAN), new Probe.At(CORNER, corner)),
        times,
        stepTolerance);
  }

  private static Boundary convection(double coefficient, TimeFunction ambient) {
    return new Boundary.Convection(TimeFunction.constant(coefficient), ambient);
  }
}
