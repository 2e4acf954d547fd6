package stenotherm.conduction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.Coordinates;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;

/** Builds a {@link HeatNetwork}. Not thread-safe. */
public final class HeatNetworkBuilder {
  final Layout layout;
  final MeshControl mesh;
  final Map<Face, BoundaryKind> faces = new EnumMap<>(Face.class);
  final Map<String, BoundaryKind> environments = new LinkedHashMap<>();
  final Map<FacePatch, BoundaryKind> patches = new LinkedHashMap<>();

  /** Names of all sources in their order. */
  final Set<String> sources = new LinkedHashSet<>();

  /** Blocks of the sources with a name of their own. */
  final Map<String, Set<String>> heated = new HashMap<>();

  final List<ThinResistance> resistances = new ArrayList<>();

  HeatNetworkBuilder(Layout layout, MeshControl mesh) {
    this.layout = layout;
    this.mesh = mesh;
  }

  /**
   * Sets the kind of boundary at a face of the domain; a face is adiabatic until set.
   *
   * @param face the face
   * @param kind the kind of boundary
   * @return this builder
   */
  public HeatNetworkBuilder boundary(Face face, BoundaryKind kind) {
    Checks.given("face", face);
    Checks.given("kind of boundary", kind);
    if (kind == BoundaryKind.ADIABATIC) {
      faces.remove(face);
    } else {
      faces.put(face, kind);
    }
    return this;
  }

  /**
   * Sets the kind of boundary at the surface of an environment; every environment needs one.
   *
   * @param environment name of the environment block
   * @param kind the kind of boundary
   * @return this builder
   * @throws InvalidInputException if there is no environment of that name
   */
  public HeatNetworkBuilder boundary(String environment, BoundaryKind kind) {
    if (layout.block(environment).isSolid()) {
      throw new InvalidInputException(
          "boundary '" + environment + "'", "is a solid block, not an environment");
    }
    environments.put(environment, Checks.given("kind of boundary", kind));
    return this;
  }

  /**
   * Gives a part of a face a boundary of its own. Grid lines follow its edges. It overrides the
   * face and the patches before it; it has a port of its own unless it is adiabatic.
   *
   * @param patch the part of a face
   * @param kind the kind of boundary
   * @return this builder
   * @throws InvalidInputException if its name is taken, or it does not lie on its face
   */
  public HeatNetworkBuilder patch(FacePatch patch, BoundaryKind kind) {
    FacePatches.check(patch, layout, patches.keySet());
    patches.put(patch, Checks.given("kind of boundary", kind));
    return this;
  }

  List<FacePatch> patchList() {
    return List.copyOf(patches.keySet());
  }

  /**
   * Adds a heat source, spread evenly over the cells that the block keeps.
   *
   * @param block name of the block
   * @return this builder
   */
  public HeatNetworkBuilder source(String block) {
    sources.add(block);
    return this;
  }

  /**
   * Adds a heat source with a name of its own, spread evenly over the cells that blocks keep: the
   * power is shared by volume. Several sources may heat the same block.
   *
   * @param name name of the source
   * @param blocks names of the heated blocks
   * @return this builder
   * @throws InvalidInputException if the name is blank or taken, or there are no blocks
   */
  public HeatNetworkBuilder source(String name, Set<String> blocks) {
    requireFree(name);
    if (blocks.isEmpty()) {
      throw new InvalidInputException("source '" + name + "'", "needs at least one block");
    }
    sources.add(name);
    heated.put(name, Set.copyOf(blocks));
    return this;
  }

  private void requireFree(String name) {
    Checks.name("source name", name);
    String field = "source '" + name + "'";
    if (layout.blocks().stream().anyMatch(block -> block.name().equals(name))) {
      throw new InvalidInputException(
          field, "is the name of a block; a source of that name heats that block alone");
    }
    for (Face face : Face.values()) {
      if (face.label().equals(name)) {
        throw new InvalidInputException(field, "is the name of a face of the domain");
      }
    }
    if (sources.contains(name)) {
      throw new InvalidInputException(field, "occurs twice; every source needs its own name");
    }
  }

  /** Refuses a source with the name of a patch. */
  private void checkNames() {
    for (FacePatch patch : patches.keySet()) {
      if (sources.contains(patch.name())) {
        throw new InvalidInputException(
            "source '" + patch.name() + "'", "is the name of a patch; every port needs its own");
      }
    }
  }

  /**
   * Adds a thin resistance.
   *
   * @param resistance the resistance
   * @return this builder
   * @throws InvalidInputException if it names a block that does not exist
   */
  public HeatNetworkBuilder thinResistance(ThinResistance resistance) {
    resistance.inside().forEach(layout::indexOf);
    resistance.outside().forEach(layout::indexOf);
    resistances.add(resistance);
    return this;
  }

  /**
   * Axes along which nothing varies: all blocks and patches span the domain and both ends are
   * adiabatic. One cell is exact.
   */
  Set<Axis> uniformAxes() {
    Set<Axis> uniform = EnumSet.noneOf(Axis.class);
    for (Axis axis : Axis.values()) {
      boolean spanned =
          layout.blocks().stream()
              .allMatch(
                  block ->
                      block.box().min().along(axis) == layout.domain().min().along(axis)
                          && block.box().max().along(axis) == layout.domain().max().along(axis)
                          && !block.shape().isCurvedAcross(axis));
      boolean adiabatic =
          !faces.containsKey(Face.of(axis, false)) && !faces.containsKey(Face.of(axis, true));
      if (spanned && adiabatic && patches.keySet().stream().allMatch(p -> spans(p, axis))) {
        uniform.add(axis);
      }
    }
    return uniform;
  }

  private boolean spans(FacePatch patch, Axis axis) {
    return patch.face().axis() != axis
        && patch.region().min().along(axis) <= layout.domain().min().along(axis)
        && patch.region().max().along(axis) >= layout.domain().max().along(axis);
  }

  /**
   * Refuses boundaries where there is no surface: at radius 0, or where an angle begins and ends.
   */
  private void checkSurfaces() {
    Set<Face> used = EnumSet.noneOf(Face.class);
    used.addAll(faces.keySet());
    patches.keySet().forEach(patch -> used.add(patch.face()));
    for (Face face : used) {
      boolean isSurface =
          switch (layout.coordinates()) {
            case CARTESIAN -> true;
            case CYLINDRICAL -> face.axis() != Axis.Y;
            case SPHERICAL -> face.axis() == Axis.X;
          };
      boolean isCentre =
          layout.coordinates() != Coordinates.CARTESIAN
              && face == Face.X_MIN
              && layout.domain().min().x() == 0;
      if (!isSurface || isCentre) {
        throw new InvalidInputException(
            "boundary '" + face.label() + "'",
            isCentre
                ? "lies at radius 0, where there is no surface"
                : "is no surface in " + layout.coordinates() + " coordinates: nothing passes it");
      }
    }
  }

  /**
   * Makes the network.
   *
   * @return the network
   * @throws InvalidInputException if an environment has no boundary kind, a boundary touches no
   *     solid cell or lies where a radius or an angle has no surface, a source has no cells, no
   *     surface or the name of a patch, or the grid would be too large or too coarse for a round
   *     block
   */
  public HeatNetwork build() {
    checkSurfaces();
    checkNames();
    for (Block block : layout.blocks()) {
      if (!block.isSolid() && !environments.containsKey(block.name())) {
        throw new InvalidInputException(
            "environment '" + block.name() + "'",
            "has no boundary; say how heat passes its surface");
      }
    }
    return new HeatNetwork(this);
  }
}
