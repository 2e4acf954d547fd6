package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.List;
import java.util.Locale;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.base.Times;
import stenotherm.base.Volumes;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Walls;
import stenotherm.transit.TransitResult;

/**
 * What helps more per litre of a larger box: thicker foam, or more fill around the cup?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class FoamOrSize {
  private static final double[] FOAM = {0.015, 0.030, 0.045};
  private static final double[] FILL = {0.025, 0.040, 0.055};

  private FoamOrSize() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // invented: foam and fill, six hours at 0 °C without a warmer, twelve with one
    Surroundings room = Surroundings.of(Ambient.constant(fromCelsius(0)), 0, FaceFilms.indoors());
    double[][] hours = new double[FOAM.length][FILL.length];
    SampleParcel.print("Hours in the alarm band without a warmer (litres outside):");
    SampleParcel.print("fill on all sides     25 mm        40 mm        55 mm");
    for (int row = 0; row < FOAM.length; row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < FILL.length; column++) {
        Parcel parcel = box(FOAM[row], FILL[column], List.of());
        TransitResult result = SampleParcel.send(parcel, SampleParcel.wait(room, 6));
        double left =
            SampleParcel.exposure(result)
                .outside(Limit.ALARM)
                .firstBreach()
                .orElse(Times.fromHours(6));
        hours[row][column] = Times.toHours(left);
        line.append(
            String.format(
                Locale.ROOT,
                "   %.2f (%4.1f)",
                hours[row][column],
                Volumes.toLitres(parcel.outerVolume())));
      }
      SampleParcel.print("foam of %.0f mm      %s", Lengths.toMillimetres(FOAM[row]), line);
    }
    Parcel foamy = box(FOAM[2], FILL[0], List.of(SampleParcel.warmer(Face.Z_MAX)));
    Parcel filled = box(FOAM[0], FILL[2], List.of(SampleParcel.warmer(Face.Z_MAX)));
    TransitResult warmFoamy = SampleParcel.send(foamy, SampleParcel.wait(room, 12));
    TransitResult warmFilled = SampleParcel.send(filled, SampleParcel.wait(room, 12));
    SampleParcel.print(
        "Each litre from the smallest box on adds %.2f h if it goes into foam, %.2f h if into fill;"
            + " with a warmer on the lid the coldest part is at %.1f °C after 12 h with 45 mm of"
            + " foam, %.1f °C with 15 mm in a box of the same size.",
        perLitre(hours[2][0] - hours[0][0], foamy),
        perLitre(hours[0][2] - hours[0][0], filled),
        SampleParcel.celsius(SampleParcel.last(warmFoamy.coldest(SampleParcel.CUP))),
        SampleParcel.celsius(SampleParcel.last(warmFilled.coldest(SampleParcel.CUP))));
    SampleParcel.printCautions(warmFoamy);
  }

  /** The same fill on every side of the cup. */
  private static Parcel box(double foam, double fill, List<PlacedWarmer> warmers) {
    Walls walls = SampleParcel.walls(foam);
    Dimensions cup = SampleParcel.CUP_SIZE;
    var inner =
        new Dimensions(cup.length() + 2 * fill, cup.width() + 2 * fill, cup.height() + 2 * fill);
    return new Parcel(
        "box",
        walls.around(inner),
        walls,
        Materials.SHREDDED_PAPER,
        List.of(SampleParcel.cup(fill)),
        warmers);
  }

  private static double perLitre(double hours, Parcel larger) {
    double smallest = box(FOAM[0], FILL[0], List.of()).outerVolume();
    return hours / Volumes.toLitres(larger.outerVolume() - smallest);
  }
}
