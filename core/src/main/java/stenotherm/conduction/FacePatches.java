package stenotherm.conduction;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.RectilinearGrid;

/** Finds the boundary at a cell's face on the surface of the domain: a patch or the face. */
final class FacePatches {
  /** How far a patch may stick out by round-off, as a part of the domain's extent. */
  private static final double ROUND_OFF = 1e-9;

  private final RectilinearGrid grid;
  private final List<FacePatch> patches;

  /** Patches in the order in which later ones override earlier ones. */
  FacePatches(RectilinearGrid grid, List<FacePatch> patches) {
    this.grid = grid;
    this.patches = patches;
  }

  /** Refuses a patch whose name is taken, or that does not lie within its face. */
  static void check(FacePatch patch, Layout layout, Collection<FacePatch> others) {
    String field = "patch '" + patch.name() + "'";
    for (FacePatch other : others) {
      if (other.name().equals(patch.name())) {
        throw new InvalidInputException(field, "occurs twice; every patch needs a name of its own");
      }
    }
    for (Block block : layout.blocks()) {
      if (block.name().equals(patch.name())) {
        throw new InvalidInputException(field, "is also the name of a block");
      }
    }
    Box domain = layout.domain();
    Box region = patch.region();
    for (Face face : Face.values()) {
      double excess = domain.excess(region, face);
      double slack = ROUND_OFF * domain.size(face.axis());
      if (face.axis() != patch.face().axis() && excess > slack) {
        throw new InvalidInputException(
            field, millimetres("sticks out of its face at " + face.label() + " by", excess));
      }
      // the region must touch or cut the plane of the face
      if (face == patch.face() && excess < -slack) {
        throw new InvalidInputException(
            field, millimetres("ends before the face " + face.label() + " by", -excess));
      }
      if (face == patch.face().opposite() && -excess > domain.size(face.axis()) + slack) {
        throw new InvalidInputException(
            field,
            millimetres(
                "lies beyond the face " + patch.face().label() + " by",
                -excess - domain.size(face.axis())));
      }
    }
  }

  private static String millimetres(String what, double metres) {
    return String.format(Locale.ROOT, "%s %.2f mm", what, Lengths.toMillimetres(metres));
  }

  /** Name of the boundary at a cell's face on the surface of the domain. */
  String boundaryAt(int cell, Face face) {
    for (int index = patches.size() - 1; index >= 0; index--) {
      if (covers(patches.get(index), cell, face)) {
        return patches.get(index).name();
      }
    }
    return face.label();
  }

  private boolean covers(FacePatch patch, int cell, Face face) {
    if (patch.face() != face) {
      return false;
    }
    for (Axis axis : Axis.values()) {
      if (axis != face.axis()) {
        int position = grid.position(axis, cell);
        double centre = (grid.line(axis, position) + grid.line(axis, position + 1)) / 2;
        if (centre < patch.region().min().along(axis)
            || centre > patch.region().max().along(axis)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Tells whether a boundary is a face that has patches. */
  boolean areOn(String boundary) {
    return patches.stream().anyMatch(patch -> patch.face().label().equals(boundary));
  }

  /** Tells whether a boundary is a patch. */
  boolean include(String boundary) {
    return patches.stream().anyMatch(patch -> patch.name().equals(boundary));
  }
}
