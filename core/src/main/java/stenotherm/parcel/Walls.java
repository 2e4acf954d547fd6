package stenotherm.parcel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/**
 * The walls of a parcel: for each face its layers, outermost first. Layer n of all faces together
 * forms a shell. A shell of one material without joints is one piece; otherwise it is six panels,
 * and the joints say which reach over which.
 *
 * <p>A value, thus thread-safe.
 *
 * @param layers layers of every face, outermost first
 * @param joints how panels meet
 */
public record Walls(Map<Face, List<WallLayer>> layers, Joints joints) {
  /** The field of complaints about them. */
  static final String FIELD = "walls";

  /**
   * Copies the layers.
   *
   * @throws InvalidInputException if a face has no layer
   */
  public Walls {
    Checks.given("layers", layers);
    Checks.given("joints", joints);
    Map<Face, List<WallLayer>> copy = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      List<WallLayer> ofFace = layers.getOrDefault(face, List.of());
      if (ofFace.isEmpty()) {
        throw new InvalidInputException("wall at the " + face.words(), "has no layer");
      }
      copy.put(face, List.copyOf(ofFace));
    }
    layers = Collections.unmodifiableMap(copy);
  }

  /**
   * Walls without gaps between their panels.
   *
   * @param layers layers of every face, outermost first
   * @throws InvalidInputException if a face has no layer
   */
  public Walls(Map<Face, List<WallLayer>> layers) {
    this(layers, Joints.NONE);
  }

  /**
   * The same layers on all six faces.
   *
   * @param layers the layers, outermost first
   * @return the walls
   * @throws InvalidInputException if there is no layer
   */
  public static Walls uniform(List<WallLayer> layers) {
    Map<Face, List<WallLayer>> all = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      all.put(face, layers);
    }
    return new Walls(all);
  }

  /**
   * The walls with other layers on one face.
   *
   * @param face the face
   * @param other its layers, outermost first
   * @return the changed walls
   * @throws InvalidInputException if there is no layer
   */
  public Walls with(Face face, List<WallLayer> other) {
    Map<Face, List<WallLayer>> changed = new EnumMap<>(layers);
    changed.put(face, other);
    return new Walls(changed, joints);
  }

  /**
   * The walls with other joints.
   *
   * @param other how panels meet
   * @return the changed walls
   */
  public Walls with(Joints other) {
    return new Walls(layers, other);
  }

  /**
   * The same walls with another material in place of the one of its name.
   *
   * @param other the material
   * @return the changed walls
   */
  public Walls replacing(Material other) {
    Map<Face, List<WallLayer>> changed = new EnumMap<>(Face.class);
    layers.forEach(
        (face, each) ->
            changed.put(
                face,
                each.stream()
                    .map(
                        layer ->
                            layer.material().name().equals(other.name())
                                ? new WallLayer(other, layer.thickness())
                                : layer)
                    .toList()));
    return new Walls(changed, joints);
  }

  /**
   * Finds the layer that insulates best.
   *
   * @return the layer of the largest resistance
   */
  public WallLayer insulation() {
    return layers.values().stream()
        .flatMap(List::stream)
        .max(Comparator.comparingDouble(each -> each.thickness() / each.material().conductivity()))
        .orElseThrow();
  }

  /**
   * Returns the thickness of a face.
   *
   * @param face the face
   * @return sum of its layers [m]
   */
  public double thickness(Face face) {
    return layersOf(face).stream().mapToDouble(WallLayer::thickness).sum();
  }

  /**
   * Returns the outer box around a cavity of given size.
   *
   * @param inner inner size
   * @return the outer box, its lower corner at the origin [m]
   */
  public Box around(Dimensions inner) {
    double[] size = new double[3];
    for (Axis axis : Axis.values()) {
      size[axis.ordinal()] =
          thickness(Face.of(axis, false)) + inner.along(axis) + thickness(Face.of(axis, true));
    }
    return Box.ofSize(size[0], size[1], size[2]);
  }

  /**
   * Returns the layers of a face.
   *
   * @param face the face
   * @return its layers, outermost first; unmodifiable
   */
  public List<WallLayer> layersOf(Face face) {
    return layers.getOrDefault(face, List.of());
  }

  /** All layers at a position in their ranges of conductivity. */
  Walls at(double position) {
    return changed(layer -> layer.at(position));
  }

  private Walls changed(UnaryOperator<WallLayer> change) {
    Map<Face, List<WallLayer>> changed = new EnumMap<>(Face.class);
    layers.forEach((face, list) -> changed.put(face, list.stream().map(change).toList()));
    return new Walls(changed, joints);
  }

  /** The box inside the first shells. */
  Box inside(Box outer, int shells) {
    double[] min = {outer.min().x(), outer.min().y(), outer.min().z()};
    double[] max = {outer.max().x(), outer.max().y(), outer.max().z()};
    for (Face face : Face.values()) {
      // loops: each step of thousands of runs asks for the cavity
      List<WallLayer> all = layersOf(face);
      double depth = 0;
      for (int shell = 0; shell < Math.min(shells, all.size()); shell++) {
        depth += all.get(shell).thickness();
      }
      int a = face.axis().ordinal();
      if (face.isMax()) {
        max[a] -= depth;
      } else {
        min[a] += depth;
      }
    }
    for (Axis axis : Axis.values()) {
      if (!(max[axis.ordinal()] > min[axis.ordinal()])) {
        throw new InvalidInputException(
            FIELD,
            "leave no room inside along the "
                + List.of("length", "width", "height").get(axis.ordinal())
                + ", where they take "
                + LengthText.of(outer.size(axis) - max[axis.ordinal()] + min[axis.ordinal()])
                + " of "
                + LengthText.of(outer.size(axis)));
      }
    }
    return new Box(new Point(min[0], min[1], min[2]), new Point(max[0], max[1], max[2]));
  }

  int shells() {
    int most = 0;
    for (List<WallLayer> all : layers.values()) {
      most = Math.max(most, all.size());
    }
    return most;
  }

  /** Blocks of all shells, outermost first; the first fills the parcel. */
  List<Block> blocks(Box outer) {
    List<Block> blocks = new ArrayList<>();
    for (int shell = 0; shell < shells(); shell++) {
      Box box = inside(outer, shell);
      if (isOnePiece(shell)) {
        blocks.add(
            new Block.Solid(shellName(shell), box, layersOf(Face.Z_MAX).get(shell).material()));
      } else {
        addPanels(blocks, box, shell);
      }
    }
    return blocks;
  }

  private boolean isOnePiece(int shell) {
    if (joints.areIn(shell)) {
      return false;
    }
    List<WallLayer> first = layersOf(Face.X_MIN);
    for (Face face : Face.values()) {
      List<WallLayer> here = layersOf(face);
      if (here.size() <= shell || !here.get(shell).material().equals(first.get(shell).material())) {
        return false;
      }
    }
    return true;
  }

  private void addPanels(List<Block> blocks, Box box, int shell) {
    for (int rank = joints.overlap().size() - 1; rank >= 0; rank--) {
      for (boolean max : new boolean[] {false, true}) {
        Face face = Face.of(joints.overlap().get(rank), max);
        if (layersOf(face).size() <= shell) {
          continue;
        }
        WallLayer layer = layersOf(face).get(shell);
        if (blocks.isEmpty()) {
          // the first block must fill the parcel; the panels and the fill cover it
          blocks.add(new Block.Solid("wall base", box, layer.material()));
        }
        blocks.add(
            new Block.Solid(
                panelName(shell, face), panel(box, face, layer.thickness()), layer.material()));
      }
    }
  }

  private static Box panel(Box box, Face face, double thickness) {
    double[] min = {box.min().x(), box.min().y(), box.min().z()};
    double[] max = {box.max().x(), box.max().y(), box.max().z()};
    int a = face.axis().ordinal();
    if (face.isMax()) {
      min[a] = max[a] - thickness;
    } else {
      max[a] = min[a] + thickness;
    }
    return new Box(new Point(min[0], min[1], min[2]), new Point(max[0], max[1], max[2]));
  }

  /** The resistances between the panels that meet at an edge. */
  List<ThinResistance> jointResistances() {
    List<ThinResistance> all = new ArrayList<>();
    for (int shell = 0; shell < shells(); shell++) {
      if (!joints.areIn(shell)) {
        continue;
      }
      for (Face one : Face.values()) {
        for (Face other : Face.values()) {
          if (joints.covers(one.axis(), other.axis())
              && layersOf(one).size() > shell
              && layersOf(other).size() > shell) {
            all.add(
                ThinResistance.between(
                    panelName(shell, one), panelName(shell, other), joints.resistance()));
          }
        }
      }
    }
    return all;
  }

  /** Mass of all layers, each edge counted with the panel that reaches over it [kg]. */
  double mass(Box outer) {
    double sum = 0;
    for (int shell = 0; shell < shells(); shell++) {
      Box box = inside(outer, shell);
      Box within = inside(outer, shell + 1);
      for (Face face : Face.values()) {
        if (layersOf(face).size() <= shell) {
          continue;
        }
        WallLayer layer = layersOf(face).get(shell);
        double volume = layer.thickness();
        for (Axis axis : Axis.values()) {
          if (axis != face.axis()) {
            volume *= (joints.covers(face.axis(), axis) ? box : within).size(axis);
          }
        }
        sum += volume * layer.material().density();
      }
    }
    return sum;
  }

  private static String shellName(int shell) {
    return "wall " + (shell + 1);
  }

  private static String panelName(int shell, Face face) {
    return shellName(shell) + " " + face.label();
  }

  /** Name of the block that the inner side of a face is made of. */
  String innermost(Face face) {
    int shell = layersOf(face).size() - 1;
    return isOnePiece(shell) ? shellName(shell) : panelName(shell, face);
  }
}
