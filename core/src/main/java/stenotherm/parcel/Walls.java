package stenotherm.parcel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stenotherm.base.Axis;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;

/**
 * The walls of a parcel: for each face its layers, outermost first. Layer n of all faces together
 * forms a shell; where shells are of different material at an edge, lid and floor reach over the
 * sides, and the y sides over the x sides.
 *
 * <p>Stable. A value, thus thread-safe.
 *
 * @param layers layers of every face, outermost first
 */
public record Walls(Map<Face, List<WallLayer>> layers) {
  /**
   * Copies the layers.
   *
   * @throws InvalidInputException if a face has no layer
   */
  public Walls {
    Map<Face, List<WallLayer>> copy = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      List<WallLayer> ofFace = layers.getOrDefault(face, List.of());
      if (ofFace.isEmpty()) {
        throw new InvalidInputException("wall " + face.label(), "has no layer");
      }
      copy.put(face, List.copyOf(ofFace));
    }
    layers = java.util.Collections.unmodifiableMap(copy);
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
   */
  public Walls with(Face face, List<WallLayer> other) {
    Map<Face, List<WallLayer>> changed = new EnumMap<>(layers);
    changed.put(face, other);
    return new Walls(changed);
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

  private List<WallLayer> layersOf(Face face) {
    return layers.getOrDefault(face, List.of());
  }

  /** All layers at an end of their ranges of conductivity. */
  Walls at(End end) {
    Map<Face, List<WallLayer>> changed = new EnumMap<>(Face.class);
    layers.forEach((face, list) -> changed.put(face, list.stream().map(l -> l.at(end)).toList()));
    return new Walls(changed);
  }

  /** The box inside the first shells. */
  Box inside(Box outer, int shells) {
    double[] min = {outer.min().x(), outer.min().y(), outer.min().z()};
    double[] max = {outer.max().x(), outer.max().y(), outer.max().z()};
    for (Face face : Face.values()) {
      double depth = layersOf(face).stream().limit(shells).mapToDouble(WallLayer::thickness).sum();
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
            "walls",
            "leave no room inside along " + axis + "; make the box larger or the walls thinner");
      }
    }
    return new Box(new Point(min[0], min[1], min[2]), new Point(max[0], max[1], max[2]));
  }

  int shells() {
    return layers.values().stream().mapToInt(List::size).max().orElse(0);
  }

  /** Blocks of all shells, outermost first; the first fills the parcel. */
  List<Block> blocks(Box outer) {
    List<Block> blocks = new ArrayList<>();
    for (int shell = 0; shell < shells(); shell++) {
      Box box = inside(outer, shell);
      if (isOneMaterial(shell)) {
        blocks.add(
            new Block.Solid(shellName(shell), box, layersOf(Face.Z_MAX).get(shell).material()));
      } else {
        addSlabs(blocks, box, shell);
      }
    }
    return blocks;
  }

  private boolean isOneMaterial(int shell) {
    List<WallLayer> all = new ArrayList<>();
    layers.values().forEach(list -> list.stream().skip(shell).limit(1).forEach(all::add));
    return all.size() == Face.values().length
        && all.stream().map(WallLayer::material).distinct().count() == 1;
  }

  private void addSlabs(List<Block> blocks, Box box, int shell) {
    for (Face face : Face.values()) {
      if (layersOf(face).size() <= shell) {
        continue;
      }
      WallLayer layer = layersOf(face).get(shell);
      if (blocks.isEmpty()) {
        // the first block must fill the parcel; the slabs and the fill cover it
        blocks.add(new Block.Solid("wall base", box, layer.material()));
      }
      blocks.add(
          new Block.Solid(
              slabName(shell, face), slab(box, face, layer.thickness()), layer.material()));
    }
  }

  private static Box slab(Box box, Face face, double thickness) {
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

  private static String shellName(int shell) {
    return "wall " + (shell + 1);
  }

  private static String slabName(int shell, Face face) {
    return shellName(shell) + " " + face.label();
  }

  /** Name of the block that the inner side of a face is made of. */
  String innermost(Face face) {
    int shell = layersOf(face).size() - 1;
    return isOneMaterial(shell) ? shellName(shell) : slabName(shell, face);
  }
}
