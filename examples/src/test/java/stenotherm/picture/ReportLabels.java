package stenotherm.picture;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import stenotherm.picture.Canvas.Lettering;

/** The texts in the pictures of a page, by the widths that they are laid out with. */
public final class ReportLabels {
  private static final Pattern PICTURE = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

  private ReportLabels() {}

  private record Label(String text, Area box) {}

  /** Pairs of texts of one picture that cover each other. */
  public static List<String> collisions(String page) {
    List<String> found = new ArrayList<>();
    for (String svg : pictures(page)) {
      List<Label> labels = labels(svg);
      for (int one = 0; one < labels.size(); one++) {
        for (Label other : labels.subList(0, one)) {
          if (labels.get(one).box().overlaps(other.box())) {
            found.add("'" + other.text() + "' and '" + labels.get(one).text() + "'");
          }
        }
      }
    }
    return found;
  }

  /** Texts that reach beyond their picture. */
  public static List<String> clipped(String page) {
    List<String> found = new ArrayList<>();
    for (String svg : pictures(page)) {
      Element root = root(svg);
      Area whole = new Area(0, 0, number(root, "width"), number(root, "height"));
      labels(svg).stream()
          .filter(label -> !whole.contains(label.box()))
          .map(Label::text)
          .forEach(found::add);
    }
    return found;
  }

  /** Number of texts in all pictures of a page. */
  public static int count(String page) {
    return pictures(page).stream().mapToInt(svg -> labels(svg).size()).sum();
  }

  private static List<String> pictures(String page) {
    return PICTURE.matcher(page).results().map(each -> each.group()).toList();
  }

  private static Element root(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
          .getDocumentElement();
    } catch (Exception wrong) {
      throw new AssertionError(wrong);
    }
  }

  private static List<Label> labels(String svg) {
    NodeList texts = root(svg).getElementsByTagName("text");
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      // a rim has the place of the text that it belongs to
      if (!text.hasAttribute("aria-hidden") && !text.getTextContent().isBlank()) {
        labels.add(new Label(text.getTextContent(), box(text)));
      }
    }
    return labels;
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  /** From the top of capitals to the baseline: descenders may reach into a gap between lines. */
  private static Area box(Element text) {
    double size = number(text, "font-size");
    boolean bold = text.getAttribute("font-weight").equals("bold");
    double length =
        Letters.width(text.getTextContent(), new Lettering(size, bold, Look.INK, false, false));
    double before =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> length / 2;
          case "end" -> length;
          default -> 0;
        };
    double x = number(text, "x");
    double y = number(text, "y");
    return text.hasAttribute("transform")
        ? new Area(x - 0.75 * size, y + before - length, x, y + before)
        : new Area(x - before, y - 0.75 * size, x - before + length, y);
  }
}
