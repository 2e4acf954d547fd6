package stenotherm.validation.agreement;

import java.util.List;
import stenotherm.base.Range;
import stenotherm.grid.FacePatch;
import stenotherm.grid.MeshControl;
import stenotherm.parcel.Parcel;

/** Finds a mesh that gives a parcel a wanted number of cells. */
final class Meshes {
  /** Growth and largest cell are scaled together, so that coarse meshes grow fast. */
  private static final MeshControl USUAL = MeshControl.uniform(0.01);

  private static final double COARSEST = 8;
  private static final double FINEST = 0.25;
  private static final int BISECTIONS = 12;

  private Meshes() {}

  /** The mesh whose number of cells is within a range, if possible in its middle. */
  static MeshControl of(Parcel parcel, List<FacePatch> patches, Range cells) {
    double middle = Math.sqrt(cells.low() * cells.high());
    double fine = FINEST;
    double coarse = COARSEST;
    MeshControl best = USUAL.scaled(coarse);
    double bestCells = count(parcel, patches, best);
    for (int pass = 0; pass < BISECTIONS; pass++) {
      double scale = Math.sqrt(fine * coarse);
      MeshControl mesh = USUAL.scaled(scale);
      double count = count(parcel, patches, mesh);
      if (Math.abs(Math.log(count / middle)) < Math.abs(Math.log(bestCells / middle))) {
        best = mesh;
        bestCells = count;
      }
      if (count > middle) {
        fine = scale;
      } else {
        coarse = scale;
      }
    }
    return best;
  }

  private static int count(Parcel parcel, List<FacePatch> patches, MeshControl mesh) {
    return parcel.network(mesh, patches).solidCellCount();
  }
}
