package stenotherm.validation.verification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.TemperatureField;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Material;

/**
 * A body as data: blocks in eighths of a box and what drives them. A property changes one thing
 * about it, or turns and scales all of it, and compares.
 *
 * @param size size of the box [m]
 * @param parts the blocks; the first fills the box
 * @param air an environment that overrides all of them, or none
 * @param faces what happens at the faces of the box
 * @param atAir what happens at the environment's surface
 * @param jump when whatever drives the body jumps [s]; from then to twice that time it ramps
 */
record Body(
    Point size,
    List<Part> parts,
    List<Extent> air,
    Map<Face, Surface> faces,
    Surface atAir,
    double jump) {
  static final int PARTS = 8;

  /** From where to where along each axis, in eighths. */
  record Extent(List<Integer> low, List<Integer> high) {
    boolean holds(int[] at) {
      boolean holds = true;
      for (int axis = 0; axis < 3; axis++) {
        holds &= at[axis] >= low.get(axis) && at[axis] < high.get(axis);
      }
      return holds;
    }
  }

  /** Values before the jump, after it and at the end of the ramp; then constant. */
  record Drive(double before, double after, double end) {
    static Drive constant(double value) {
      return new Drive(value, value, value);
    }

    Drive map(DoubleUnaryOperator change) {
      return new Drive(
          change.applyAsDouble(before), change.applyAsDouble(after), change.applyAsDouble(end));
    }

    /** In time; until a start it holds a value of rest. */
    TimeFunction function(double jump, double start, double rest) {
      double[] times = {start, start + jump, start + jump, start + 2 * jump};
      double[] values = {before, before, after, end};
      if (start == 0) {
        return TimeFunction.table(times, values);
      }
      return TimeFunction.table(
          new double[] {0, start, times[0], times[1], times[2], times[3]},
          new double[] {rest, rest, before, before, after, end});
    }
  }

  /** A block; its resistance lies all around it, its power is 0 where it is not heated. */
  record Part(
      String name, Extent extent, Material material, double resistance, Drive power, double start) {
    Part withMaterial(double conductivity, double specificHeat) {
      Material other = Material.of("any", conductivity, material.density(), specificHeat);
      return new Part(name, extent, other, resistance, power, start);
    }

    Part withConductivity(double conductivity) {
      return withMaterial(conductivity, material.specificHeat());
    }

    Part withResistance(double other) {
      return new Part(name, extent, material, other, power, start);
    }

    Part withPower(Drive other) {
      return new Part(name, extent, material, resistance, other, start);
    }

    Part withStart(double other) {
      return new Part(name, extent, material, resistance, power, other);
    }

    Part withExtent(Extent other) {
      return new Part(name, other, material, resistance, power, start);
    }
  }

  /** What a surface can be under. */
  enum Kind {
    FILM,
    HELD,
    FLUX,
    ADIABATIC
  }

  /** A boundary: its drive is an ambient, a temperature [K] or a flux [W/m2]. */
  record Surface(Kind kind, double coefficient, Drive drive) {
    Surface withDrive(Drive other) {
      return new Surface(kind, coefficient, other);
    }

    Surface withCoefficient(double other) {
      return new Surface(kind, other, drive);
    }

    boolean isTemperature() {
      return kind == Kind.FILM || kind == Kind.HELD;
    }

    Boundary boundary(double jump, double start, double rest) {
      return switch (kind) {
        case FILM ->
            new Boundary.Convection(
                TimeFunction.constant(coefficient), drive.function(jump, start, rest));
        case HELD -> new Boundary.PrescribedTemperature(drive.function(jump, start, rest));
        case FLUX -> new Boundary.PrescribedFlux(drive.function(jump, start, 0));
        case ADIABATIC -> new Boundary.Adiabatic();
      };
    }
  }

  Body withParts(UnaryOperator<Part> change) {
    return new Body(size, parts.stream().map(change).toList(), air, faces, atAir, jump);
  }

  Body withPart(int index, UnaryOperator<Part> change) {
    List<Part> changed = new ArrayList<>(parts);
    changed.set(index, change.apply(parts.get(index)));
    return new Body(size, changed, air, faces, atAir, jump);
  }

  Body withSurfaces(UnaryOperator<Surface> change) {
    Map<Face, Surface> changed = new EnumMap<>(Face.class);
    faces.forEach((face, surface) -> changed.put(face, change.apply(surface)));
    return new Body(size, parts, air, changed, change.apply(atAir), jump);
  }

  Body withFace(Face face, UnaryOperator<Surface> change) {
    Map<Face, Surface> changed = new EnumMap<>(faces);
    changed.put(face, change.apply(faces.get(face)));
    return new Body(size, parts, air, changed, atAir, jump);
  }

  /** Nothing but films and held surfaces warms or cools it. */
  Body unheated() {
    return withParts(part -> part.withPower(Drive.constant(0)))
        .withSurfaces(
            surface ->
                surface.kind() == Kind.FLUX ? surface.withDrive(Drive.constant(0)) : surface);
  }

  /** All surroundings and the start at one temperature, no flux; the powers stay. */
  Body inSurroundingsAt(double temperature) {
    return withSurfaces(
            surface -> surface.withDrive(Drive.constant(surface.isTemperature() ? temperature : 0)))
        .withParts(part -> part.withStart(temperature));
  }

  private static Extent swapped(Extent extent, List<Axis> order) {
    return new Extent(
        order.stream().map(axis -> extent.low().get(axis.ordinal())).toList(),
        order.stream().map(axis -> extent.high().get(axis.ordinal())).toList());
  }

  /** The body with its axes in another order: its new x is the old {@code order.get(0)}. */
  Body turned(List<Axis> order) {
    Map<Face, Surface> changed = new EnumMap<>(Face.class);
    for (Axis axis : Axis.values()) {
      for (boolean isMax : new boolean[] {false, true}) {
        changed.put(Face.of(axis, isMax), faces.get(Face.of(order.get(axis.ordinal()), isMax)));
      }
    }
    Point turned =
        new Point(size.along(order.get(0)), size.along(order.get(1)), size.along(order.get(2)));
    return new Body(
        turned,
        parts.stream().map(part -> part.withExtent(swapped(part.extent(), order))).toList(),
        air.stream().map(extent -> swapped(extent, order)).toList(),
        changed,
        atAir,
        jump);
  }

  private static Extent mirrored(Extent extent, Axis axis) {
    List<Integer> low = new ArrayList<>(extent.low());
    List<Integer> high = new ArrayList<>(extent.high());
    low.set(axis.ordinal(), PARTS - extent.high().get(axis.ordinal()));
    high.set(axis.ordinal(), PARTS - extent.low().get(axis.ordinal()));
    return new Extent(low, high);
  }

  Body mirrored(Axis axis) {
    Map<Face, Surface> changed = new EnumMap<>(faces);
    changed.put(Face.of(axis, false), faces.get(Face.of(axis, true)));
    changed.put(Face.of(axis, true), faces.get(Face.of(axis, false)));
    return new Body(
        size,
        parts.stream().map(part -> part.withExtent(mirrored(part.extent(), axis))).toList(),
        air.stream().map(extent -> mirrored(extent, axis)).toList(),
        changed,
        atAir,
        jump);
  }

  /** By what lengths, conductivities and heat capacities are multiplied. */
  record Scale(double length, double conductivity, double capacity) {
    /** By what times are: the Fourier number stays. */
    double time() {
      return length * length * capacity / conductivity;
    }
  }

  /** A similar body: the same temperatures at times that are scaled as well. */
  Body scaled(Scale scale) {
    double film = scale.conductivity() / scale.length();
    double power = scale.conductivity() * scale.length();
    return new Body(
            new Point(
                size.x() * scale.length(), size.y() * scale.length(), size.z() * scale.length()),
            parts,
            air,
            faces,
            atAir,
            jump * scale.time())
        .withParts(
            part ->
                part.withMaterial(
                        part.material().conductivity() * scale.conductivity(),
                        part.material().specificHeat() * scale.capacity())
                    .withResistance(part.resistance() / film)
                    .withPower(part.power().map(p -> p * power)))
        .withSurfaces(
            surface ->
                switch (surface.kind()) {
                  case FILM -> surface.withCoefficient(surface.coefficient() * film);
                  case FLUX -> surface.withDrive(surface.drive().map(q -> q * film));
                  case HELD, ADIABATIC -> surface;
                });
  }

  private Point corner(List<Integer> eighths) {
    return new Point(
        size.x() * eighths.get(0) / PARTS,
        size.y() * eighths.get(1) / PARTS,
        size.z() * eighths.get(2) / PARTS);
  }

  private Box box(Extent extent) {
    return new Box(corner(extent.low()), corner(extent.high()));
  }

  /** The blocks as they come to lie in eighths; -1 in the air. */
  private int[] painted() {
    int[] painted = new int[PARTS * PARTS * PARTS];
    for (int cell = 0; cell < painted.length; cell++) {
      int[] at = {cell % PARTS, cell / PARTS % PARTS, cell / (PARTS * PARTS)};
      for (int part = 0; part < parts.size(); part++) {
        painted[cell] = parts.get(part).extent().holds(at) ? part : painted[cell];
      }
      for (Extent extent : air) {
        painted[cell] = extent.holds(at) ? -1 : painted[cell];
      }
    }
    return painted;
  }

  /** Positions of the parts of which something is left. */
  List<Integer> visible() {
    Set<Integer> seen = new HashSet<>();
    Arrays.stream(painted()).filter(part -> part >= 0).forEach(seen::add);
    return List.copyOf(new java.util.TreeSet<>(seen));
  }

  private boolean touches(Face face, int[] painted) {
    int wanted = face.isMax() ? PARTS - 1 : 0;
    for (int cell = 0; cell < painted.length; cell++) {
      int[] at = {cell % PARTS, cell / PARTS % PARTS, cell / (PARTS * PARTS)};
      if (at[face.axis().ordinal()] == wanted && painted[cell] >= 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * A mesh of about equal cells.
   *
   * @param cells number along the longest axis, if it is a multiple of the parts
   */
  MeshControl mesh(int cells) {
    double longest = Math.max(size.x(), Math.max(size.y(), size.z()));
    // a little wider, so that round-off adds no cell
    return MeshControl.uniform(longest / (0.999 * cells));
  }

  ConductionProblem problem() {
    return problem(mesh(PARTS), 0, 0);
  }

  /**
   * The body's problem on a mesh.
   *
   * @param start when the drives begin [s]
   * @param rest temperature of all surroundings until then [K]
   */
  ConductionProblem problem(MeshControl mesh, double start, double rest) {
    List<Block> blocks = new ArrayList<>();
    for (Part part : parts) {
      blocks.add(new Block.Solid(part.name(), box(part.extent()), part.material()));
    }
    air.forEach(extent -> blocks.add(new Block.Environment("air", box(extent))));
    ConductionProblem.Builder builder = ConductionProblem.builder(new Layout(blocks), mesh);
    int[] painted = painted();
    faces.forEach(
        (face, surface) -> {
          if (touches(face, painted)) {
            builder.boundary(face, surface.boundary(jump, start, rest));
          }
        });
    if (!air.isEmpty()) {
      builder.boundary("air", atAir.boundary(jump, start, rest));
    }
    List<Integer> visible = visible();
    for (int index = 0; index < parts.size(); index++) {
      Part part = parts.get(index);
      builder.initial(part.name(), part.start());
      builder.thinResistance(ThinResistance.around(Set.of(part.name()), part.resistance()));
      if (visible.contains(index) && !part.power().equals(Drive.constant(0))) {
        builder.source(part.name(), part.power().function(jump, start, 0));
      }
    }
    return builder.initial(290).build();
  }

  /** Temperatures of all cells [K]; NaN in environments. */
  static double[] cells(TemperatureField field, RectilinearGrid grid) {
    double[] all = new double[grid.cellCount()];
    int layer = grid.stride(Axis.Z);
    for (int k = 0; k < grid.count(Axis.Z); k++) {
      double middle = (grid.line(Axis.Z, k) + grid.line(Axis.Z, k + 1)) / 2;
      System.arraycopy(field.section(Axis.Z, middle).values(), 0, all, k * layer, layer);
    }
    return all;
  }
}
