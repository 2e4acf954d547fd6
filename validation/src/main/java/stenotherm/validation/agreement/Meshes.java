package stenotherm.validation.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stenotherm.base.Range;
import stenotherm.grid.FacePatch;
import stenotherm.grid.MeshControl;
import stenotherm.grid.RectilinearGrid;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;

/** Finds a mesh that gives a parcel a wanted number of cells. */
final class Meshes {
  /** Growth and largest cell are scaled together, so that coarse meshes grow fast. */
  private static final MeshControl USUAL = MeshControl.uniform(0.01);

  private static final double COARSEST = 8;
  private static final double FINEST = 0.25;
  private static final int BISECTIONS = 10;

  private Meshes() {}

  /** The mesh whose number of cells is closest to the middle of a range. */
  static MeshControl of(Parcel parcel, Journey journey, Range cells) {
    double middle = Math.sqrt(cells.low() * cells.high());
    double fine = FINEST;
    double coarse = COARSEST;
    MeshControl best = USUAL.scaled(coarse);
    double bestCells = count(parcel, journey, best);
    for (int pass = 0; pass < BISECTIONS; pass++) {
      double scale = Math.sqrt(fine * coarse);
      MeshControl mesh = USUAL.scaled(scale);
      double count = count(parcel, journey, mesh);
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

  /** Cells of the grid that a transit has: where contacts end, a cell does. */
  static int count(Parcel parcel, Journey journey, MeshControl mesh) {
    List<FacePatch> patches = new ArrayList<>();
    for (Leg leg : journey.legs()) {
      for (Contact contact : leg.surroundings().contacts()) {
        String name = "patch " + patches.size();
        patches.add(
            FacePatch.part(
                name, contact.face(), parcel.outer(), contact.first(), contact.second()));
      }
    }
    return RectilinearGrid.of(parcel.layout(), mesh, Set.of(), patches).cellCount();
  }
}
