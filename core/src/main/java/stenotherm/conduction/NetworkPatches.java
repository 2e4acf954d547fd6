package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Suggestions;
import stenotherm.grid.RectilinearGrid;

/** The boundaries of a heat network. */
final class NetworkPatches {
  private final List<Patch> patches;

  /** Faces, environments and patches that no heat passes. */
  private final Set<String> adiabatic;

  /**
   * At 6 cell + face, 1 + the number of a cell's face counted over all patches, or 0 if it is in
   * none.
   */
  private final int[] patchFace;

  /** Number of the first face of each patch, over all patches. */
  private final int[] firstFace;

  /**
   * Finds the cell faces of each boundary.
   *
   * @throws InvalidInputException if a boundary touches no solid cell
   */
  NetworkPatches(CellNetwork cells, HeatNetworkBuilder builder) {
    this.patches = find(cells, builder);
    this.adiabatic = adiabatic(builder);
    this.patchFace = new int[6 * cells.count()];
    this.firstFace = new int[patches.size()];
    int number = 0;
    for (int p = 0; p < firstFace.length; p++) {
      Patch patch = patches.get(p);
      firstFace[p] = number;
      for (int f = 0; f < patch.cell().length; f++) {
        patchFace[6 * patch.cell()[f] + patch.face()[f].ordinal()] = ++number;
      }
    }
  }

  private NetworkPatches(NetworkPatches other, CellNetwork cells) {
    this.patches = other.patches.stream().map(patch -> before(cells, patch)).toList();
    this.adiabatic = other.adiabatic;
    this.patchFace = other.patchFace;
    this.firstFace = other.firstFace;
  }

  /** The same boundaries on cells with other conductivities. */
  NetworkPatches before(CellNetwork cells) {
    return new NetworkPatches(this, cells);
  }

  private static Patch before(CellNetwork cells, Patch patch) {
    double[] resistance = new double[patch.cell().length];
    for (int f = 0; f < resistance.length; f++) {
      resistance[f] = cells.resistance(patch.face()[f], patch.cell()[f], patch.thin()[f]);
    }
    return new Patch(
        patch.port(), patch.cell(), patch.face(), patch.area(), patch.thin(), resistance);
  }

  private static Set<String> adiabatic(HeatNetworkBuilder builder) {
    Set<String> names = new HashSet<>();
    for (Face face : Face.values()) {
      boolean hasPatches = builder.patches.keySet().stream().anyMatch(p -> p.face() == face);
      if (!builder.faces.containsKey(face) && !hasPatches) {
        names.add(face.label());
      }
    }
    builder.environments.forEach(
        (name, kind) -> {
          if (kind == BoundaryKind.ADIABATIC) {
            names.add(name);
          }
        });
    builder.patches.forEach(
        (patch, kind) -> {
          if (kind == BoundaryKind.ADIABATIC) {
            names.add(patch.name());
          }
        });
    return Set.copyOf(names);
  }

  private static List<Patch> find(CellNetwork cells, HeatNetworkBuilder builder) {
    Map<String, PatchCollector> collectors = new LinkedHashMap<>();
    builder.faces.forEach(
        (face, kind) -> collectors.put(face.label(), new PatchCollector(face.label(), kind)));
    builder.environments.forEach(
        (name, kind) -> {
          if (kind != BoundaryKind.ADIABATIC) {
            collectors.put(name, new PatchCollector(name, kind));
          }
        });
    builder.patches.forEach(
        (patch, kind) -> {
          if (kind != BoundaryKind.ADIABATIC) {
            collectors.put(patch.name(), new PatchCollector(patch.name(), kind));
          }
        });
    FacePatches facePatches = new FacePatches(cells.grid(), builder.patchList());
    for (int cell = 0; cell < cells.count(); cell++) {
      if (!cells.isSolid(cell)) {
        continue;
      }
      for (Face face : Face.values()) {
        String beyond = beyond(cells, cell, face, facePatches);
        if (beyond != null && collectors.containsKey(beyond)) {
          double thin = ThinResistance.sum(builder.resistances, cells.nameOf(cell), beyond);
          collectors.get(beyond).add(cell, face, thin);
        }
      }
    }
    List<Patch> found = new ArrayList<>();
    for (PatchCollector collector : collectors.values()) {
      if (collector.isEmpty() && facePatches.areOn(collector.name)) {
        // patches hide the whole face
        continue;
      }
      if (collector.isEmpty() && facePatches.include(collector.name)) {
        throw new InvalidInputException(
            "patch '" + collector.name + "'",
            "covers no solid cell: environments or later patches take all of it");
      }
      found.add(collector.patch(cells));
    }
    return found;
  }

  /**
   * Name of the environment, the patch or the domain's face beyond a solid cell's face; null if a
   * solid cell lies there.
   */
  private static @Nullable String beyond(
      CellNetwork cells, int cell, Face face, FacePatches facePatches) {
    RectilinearGrid grid = cells.grid();
    int position = grid.position(face.axis(), cell);
    int last = grid.count(face.axis()) - 1;
    if (position == (face.isMax() ? last : 0)) {
      return facePatches.boundaryAt(cell, face);
    }
    int neighbour = cells.neighbour(cell, face);
    return cells.isSolid(neighbour) ? null : cells.nameOf(neighbour);
  }

  List<Patch> list() {
    return patches;
  }

  /** Whether something of this name bounds the body and no heat passes it. */
  boolean isAdiabatic(String name) {
    return adiabatic.contains(name);
  }

  /** Position in {@link #list()} of the boundary at a cell's face; -1 if there is none. */
  int at(int cell, Face face) {
    int number = patchFace[6 * cell + face.ordinal()] - 1;
    int patch = firstFace.length - 1;
    while (patch >= 0 && firstFace[patch] > number) {
      patch--;
    }
    return number < 0 ? -1 : patch;
  }

  /** Position of a cell's face within the patch that {@link #at} names. */
  int indexIn(int cell, Face face, int patch) {
    return patchFace[6 * cell + face.ordinal()] - 1 - firstFace[patch];
  }

  /** Position of a boundary by its name; see {@link HeatNetwork#boundaryIndex}. */
  int indexOf(String name) {
    for (int index = 0; index < patches.size(); index++) {
      if (patches.get(index).port().name().equals(name)) {
        return index;
      }
    }
    if (adiabatic.contains(name)) {
      throw new InvalidInputException(
          "boundary", "'" + name + "' is adiabatic: no heat passes it, so it has no port");
    }
    if (Stream.of(Face.values()).anyMatch(face -> face.label().equals(name))) {
      throw new InvalidInputException(
          "boundary", "'" + name + "' is covered by patches; each of them has a port");
    }
    throw Suggestions.unknown(
        "boundary", name, patches.stream().map(patch -> patch.port().name()).toList());
  }

  /** Gathers the cell faces of one boundary. */
  private static final class PatchCollector {
    private final String name;
    private final BoundaryKind kind;
    private final List<Integer> cells = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private final List<Double> thin = new ArrayList<>();

    PatchCollector(String name, BoundaryKind kind) {
      this.name = name;
      this.kind = kind;
    }

    void add(int cell, Face face, double resistance) {
      cells.add(cell);
      faces.add(face);
      thin.add(resistance);
    }

    boolean isEmpty() {
      return cells.isEmpty();
    }

    Patch patch(CellNetwork network) {
      if (isEmpty()) {
        throw new InvalidInputException(
            "boundary '" + name + "'", "touches no solid cell, so that no heat could pass it");
      }
      int[] cell = cells.stream().mapToInt(Integer::intValue).toArray();
      double[] area = new double[cell.length];
      double[] resistance = new double[cell.length];
      for (int index = 0; index < cell.length; index++) {
        Face face = faces.get(index);
        area[index] = network.grid().surfaceArea(face, cell[index]);
        resistance[index] = network.resistance(face, cell[index], thin.get(index));
      }
      Port.BoundaryPort port = new Port.BoundaryPort(name, kind, Arrays.stream(area).sum());
      double[] thinOf = thin.stream().mapToDouble(Double::doubleValue).toArray();
      return new Patch(port, cell, faces.toArray(new Face[0]), area, thinOf, resistance);
    }
  }
}
