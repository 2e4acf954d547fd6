package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.words.Units;

/**
 * A plane section through a parcel: temperature as colours, the outlines of what is inside, points,
 * and lines of equal temperature if wanted.
 *
 * <p>Outlines and points are numbered; their names stand by their numbers below the section. Both
 * axes have the same scale.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SectionPicture extends Picture {
  final SectionField field;
  final List<Outline> outlines;
  final List<Spot> spots;
  final List<Double> isotherms;
  final String horizontalAxis;
  final String verticalAxis;
  final Units units;

  private SectionPicture(Builder builder) {
    super(builder);
    field = builder.field;
    outlines = List.copyOf(builder.outlines);
    spots = List.copyOf(builder.spots);
    isotherms = List.copyOf(builder.isotherms);
    horizontalAxis = builder.horizontalAxis;
    verticalAxis = builder.verticalAxis;
    units = builder.units;
    for (Outline outline : outlines) {
      requireInside("outline '" + outline.name() + "'", outline.x().low(), outline.z().low());
      requireInside("outline '" + outline.name() + "'", outline.x().high(), outline.z().high());
    }
    for (Spot spot : spots) {
      requireInside("spot '" + spot.text() + "'", spot.x(), spot.z());
    }
  }

  private void requireInside(String name, double x, double z) {
    // Outlines come from other sums than edges do; a micrometre is no error.
    double slack = 1e-6;
    if (x < field.x().low() - slack
        || x > field.x().high() + slack
        || z < field.z().low() - slack
        || z > field.z().high() + slack) {
      throw new InvalidInputException(
          name, "lies outside the section at " + Checks.show(x, "m") + ", " + Checks.show(z, "m"));
    }
  }

  /**
   * Starts a picture.
   *
   * @param title the answer in one sentence, which stands above the section
   * @param field the temperatures
   * @return a builder
   */
  public static Builder titled(String title, SectionField field) {
    return new Builder(title, field);
  }

  @Override
  void draw(Canvas canvas, double top) {
    SectionPicturePainter.paintAlone(canvas, this, top + 4);
  }

  /**
   * Builds a {@link SectionPicture}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final SectionField field;
    private final List<Outline> outlines = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private final List<Double> isotherms = new ArrayList<>();
    private Units units = Units.METRIC;
    private String horizontalAxis = "x";
    private String verticalAxis = "z";

    private Builder(String title, SectionField field) {
      super(title);
      this.field = field;
    }

    /**
     * Sets the reader's units, which are metric otherwise.
     *
     * @param readers the units of axes and colours
     * @return this
     */
    public Builder units(Units readers) {
      units = readers;
      return this;
    }

    /**
     * Adds an outline.
     *
     * @param outline the outline
     * @return this
     */
    public Builder outline(Outline outline) {
      outlines.add(outline);
      return this;
    }

    /**
     * Adds a point with a text.
     *
     * @param spot the point
     * @return this
     */
    public Builder spot(Spot spot) {
      spots.add(spot);
      return this;
    }

    /**
     * Adds a line of equal temperature.
     *
     * @param temperature the temperature [K]
     * @return this
     * @throws InvalidInputException if it is not a possible temperature
     */
    public Builder isotherm(double temperature) {
      isotherms.add(Checks.temperature("isotherm", temperature));
      return this;
    }

    /**
     * Names the axes, which are {@code x} and {@code z} otherwise.
     *
     * @param horizontal name of the horizontal axis
     * @param vertical name of the vertical axis
     * @return this
     * @throws InvalidInputException if a name is blank
     */
    public Builder axes(String horizontal, String vertical) {
      horizontalAxis = Checks.name("axis name", horizontal);
      verticalAxis = Checks.name("axis name", vertical);
      return this;
    }

    @Override
    Builder self() {
      return this;
    }

    /**
     * Builds the picture.
     *
     * @return the picture
     * @throws InvalidInputException if the title is blank or an outline or point lies outside the
     *     field
     */
    public SectionPicture build() {
      return new SectionPicture(this);
    }
  }
}
