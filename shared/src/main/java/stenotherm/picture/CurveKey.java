package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;

/**
 * The names of many curves above a plot, each behind a piece of its line, in the order of the
 * curves: beside curves that run close to each other there is no place from which it is clear which
 * one a name means. Empty for few curves, which have their names beside them.
 *
 * @param names the names in the order of the curves; empty if they stand beside the curves
 */
record CurveKey(List<String> names) {
  /** So many curves find places for their names even in a narrow plot. */
  private static final int MOST_BESIDE = 2;

  private static final double LINE = 17;
  private static final double GAP = 16;
  private static final double SAMPLE = 28;
  private static final double SAMPLE_GAP = 5;
  private static final Lettering LETTERS = Look.LABEL.inBold();

  /** A key if there are so many curves that it takes one. */
  static CurveKey ofMany(List<String> names) {
    return new CurveKey(names.size() > MOST_BESIDE ? List.copyOf(names) : List.of());
  }

  boolean isEmpty() {
    return names.isEmpty();
  }

  /** Height that the key takes in a picture of some width [pixel]. */
  double height(double width) {
    return isEmpty() ? 0 : LINE * lines(width).size() + SAMPLE_GAP;
  }

  /** Writes the key, whose upper end is given. */
  void paint(Canvas canvas, double top) {
    double y = top + LINE - 4;
    int index = 0;
    for (List<String> line : lines(canvas.width())) {
      double x = Look.EDGE;
      for (String text : line) {
        Plot.sample(canvas, new Pixel(x, y - 4), x + SAMPLE, index);
        Lettering letters = LETTERS.inColor(Plot.colorOf(index).forLetters());
        x += SAMPLE + SAMPLE_GAP;
        canvas.write(text, new Pixel(x, y), Alignment.START, letters);
        x += Letters.width(text, letters) + GAP;
        index++;
      }
      y += LINE;
    }
  }

  private List<List<String>> lines(double width) {
    double most = width - 2 * Look.EDGE;
    double sample = SAMPLE + SAMPLE_GAP;
    List<List<String>> lines = new ArrayList<>();
    double taken = Double.POSITIVE_INFINITY;
    for (String name : names) {
      String text = Letters.fit(name, most - sample, LETTERS);
      double length = sample + Letters.width(text, LETTERS);
      if (taken + GAP + length > most) {
        lines.add(new ArrayList<>());
        taken = -GAP;
      }
      lines.get(lines.size() - 1).add(text);
      taken += GAP + length;
    }
    return lines;
  }
}
