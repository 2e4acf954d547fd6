package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;

/**
 * What the numbers in sections stand for: a section has no room for names, least of all on a phone.
 * A thing that several sections show has one number.
 *
 * @param names the names, that of number 1 first
 */
record SectionKey(List<String> names) {
  private static final double LINE = 17;
  private static final double GAP = 18;
  private static final Lettering LETTERS = Look.LABEL;

  static SectionKey of(List<SectionPicture> sections) {
    return new SectionKey(
        sections.stream()
            .flatMap(
                section ->
                    Stream.concat(
                        section.outlines.stream().map(Outline::name),
                        section.spots.stream().map(Spot::text)))
            .distinct()
            .toList());
  }

  /** The number that stands for a name. */
  String number(String name) {
    return Integer.toString(names.indexOf(name) + 1);
  }

  /** Height that the key takes in a picture of some width [pixel]. */
  double height(double width) {
    return names.isEmpty() ? 0 : LINE * lines(width).size() + Look.EDGE;
  }

  void paint(Canvas canvas) {
    double y = canvas.height() - height(canvas.width()) + LINE - 4;
    for (List<String> line : lines(canvas.width())) {
      double x = Look.EDGE;
      for (String text : line) {
        canvas.write(text, new Pixel(x, y), Alignment.START, LETTERS);
        x += Letters.width(text, LETTERS) + GAP;
      }
      y += LINE;
    }
  }

  private List<List<String>> lines(double width) {
    double most = width - 2 * Look.EDGE;
    List<List<String>> lines = new ArrayList<>();
    double taken = Double.POSITIVE_INFINITY;
    for (String name : names) {
      String text = Letters.fit(number(name) + "  " + name, most, LETTERS);
      double length = Letters.width(text, LETTERS);
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
