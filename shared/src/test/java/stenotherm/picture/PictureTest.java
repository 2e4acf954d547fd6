package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static stenotherm.base.Temperatures.fromCelsius;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.words.Units;

class PictureTest {
  private static Arguments picture(String name, Supplier<Picture> picture) {
    return arguments(name, picture);
  }

  static Stream<Arguments> pictures() {
    return Stream.of(
        picture("temperature", Demo::temperature),
        picture("temperature-plain", Demo::plainTemperature),
        picture("temperature-crowded", PictureTest::crowdedTemperature),
        picture("temperature-long", Demo::longTemperature),
        picture("margins-eight", Demo::eightMargins),
        picture("heat", Demo::heat),
        picture("heat-gap", Demo::heatWithGap),
        picture("margins", Demo::margins),
        picture("margins-one", PictureTest::oneMargin),
        picture("section", Demo::section),
        picture("section-uniform", PictureTest::uniformSection));
  }

  /** Long names, a flat curve, an open band, a leg of no length and a jump. */
  private static Picture crowdedTemperature() {
    double[] times = {-3600, 0, 0, 7200};
    double warm = fromCelsius(20);
    TemperatureChart.Builder builder =
        TemperatureChart.titled("A title that is much too long for one line ".repeat(5))
            .subtitle("and a subtitle that does not fit either ".repeat(9))
            .curve(Curve.of("flat", new double[] {0, 7200}, new double[] {warm, warm}))
            .curve(Curve.of("jump", times, new double[] {warm, warm, warm + 5, warm + 5}))
            .alarm(new Range(fromCelsius(10), Double.POSITIVE_INFINITY))
            .comfortable(new Range(fromCelsius(-200), fromCelsius(500)))
            .clock(seconds -> "12:00");
    for (int i = 0; i < 30; i++) {
      builder.leg(new ChartLeg("leg with a long name " + i, new Range(i * 240, i * 240)));
      builder.marker(new Marker("point " + i, new Curve.Reading(i * 240, warm)));
    }
    return builder.build();
  }

  private static Picture oneMargin() {
    MarginBar margin =
        new MarginBar(
            "a name without end ".repeat(10), 0, new Range(0, 0), "a note <&> ".repeat(9));
    return MarginChart.titled("Nothing \"left\" & nothing <lost>").margin(margin).build();
  }

  private static Picture uniformSection() {
    double[][] temperatures = {
      {fromCelsius(20), fromCelsius(20)}, {fromCelsius(20), fromCelsius(20)}
    };
    SectionField field =
        new SectionField(new double[] {0, 0.01, 0.1}, new double[] {0, 0.2, 0.5}, temperatures);
    SectionPicture.Builder builder =
        SectionPicture.titled("All of one temperature", field).isotherm(fromCelsius(20));
    for (int i = 0; i < 10; i++) {
      builder.outline(new Outline("block " + i, new Range(0, 0.1), new Range(0, 0.5)));
    }
    return builder.build();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pictures")
  void drawsWithoutClippingAndAlwaysTheSame(String name, Supplier<Picture> picture)
      throws Exception {
    String svg = picture.get().svg(900, 420);

    save(name, svg);
    assertEquals(svg, picture.get().svg(900, 420));
    assertWithin(svg, 900, 420);
    assertWellFormed(svg, picture.get().title());
  }

  private static void save(String name, String svg) throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    Files.writeString(folder.resolve(name + ".svg"), svg);
  }

  private static Element root(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
        .getDocumentElement();
  }

  /** Nothing reaches the edge of the picture, texts by the widths that they are laid out with. */
  private static void assertWithin(String svg, double width, double height) throws Exception {
    Area room = new Area(1, 1, width - 1, height - 1);
    NodeList all = root(svg).getElementsByTagName("*");
    int seen = 0;
    // the first two are the title and the background
    for (int i = 2; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      Area area = extent(element);
      assertTrue(room.contains(area), element.getTagName() + " " + area + " in " + svg);
      seen++;
    }
    assertTrue(seen > 10, svg);
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  private static Area extent(Element element) {
    switch (element.getTagName()) {
      case "rect":
        return Area.sized(
            number(element, "x"),
            number(element, "y"),
            number(element, "width"),
            number(element, "height"));
      case "circle":
        return around(element, number(element, "r"), number(element, "r"));
      case "ellipse":
        return around(element, number(element, "rx"), number(element, "ry"));
      case "path":
        double[] numbers =
            Pattern.compile("[MLZ ]+")
                .splitAsStream(element.getAttribute("d"))
                .filter(each -> !each.isEmpty())
                .mapToDouble(Double::parseDouble)
                .toArray();
        Area path = new Area(numbers[0], numbers[1], numbers[0], numbers[1]);
        for (int i = 2; i < numbers.length; i += 2) {
          path =
              new Area(
                  Math.min(path.left(), numbers[i]),
                  Math.min(path.top(), numbers[i + 1]),
                  Math.max(path.right(), numbers[i]),
                  Math.max(path.bottom(), numbers[i + 1]));
        }
        return path;
      case "text":
        return extentOfText(element);
      default:
        throw new AssertionError(element.getTagName());
    }
  }

  private static Area around(Element element, double across, double down) {
    double x = number(element, "cx");
    double y = number(element, "cy");
    return new Area(x - across, y - down, x + across, y + down);
  }

  private static Area extentOfText(Element text) {
    double size = number(text, "font-size");
    boolean bold = text.getAttribute("font-weight").equals("bold");
    Lettering letters = new Lettering(size, bold, Look.INK, false, false);
    double length = Letters.width(text.getTextContent(), letters);
    double before =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> length / 2;
          case "end" -> length;
          default -> 0;
        };
    double x = number(text, "x");
    double y = number(text, "y");
    return text.hasAttribute("transform")
        ? new Area(x - 0.8 * size, y + before - length, x + 0.2 * size, y + before)
        : new Area(x - before, y - 0.8 * size, x - before + length, y + 0.2 * size);
  }

  @Test
  void sheetOfFourSectionsIsNeitherClippedNorLarge() throws Exception {
    int height = Demo.sheet().heightFor(1100);
    String svg = Demo.sheet().svg(1100, height);
    save("sheet", svg);

    assertWithin(svg, 1100, height);
    assertTrue(svg.length() < 300_000, svg.length() + " bytes");
    assertThrows(InvalidInputException.class, () -> Demo.sheet().svg(1100, 340));
  }

  private static void assertWellFormed(String svg, String title) throws Exception {
    Element root = root(svg);
    assertEquals("svg", root.getTagName());
    assertEquals("0 0 900 420", root.getAttribute("viewBox"));
    assertEquals(title, root.getElementsByTagName("title").item(0).getTextContent());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pictures")
  void drawsInOtherSizes(String name, Supplier<Picture> picture) throws Exception {
    assertWithin(picture.get().svg(1600, 900), 1600, 900);
    assertWithin(picture.get().svg(600, 500), 600, 500);
  }

  @Test
  void curvesBandsLegsAndPointsAreNamedInTheChart() {
    String svg = Demo.temperature().svg(900, 420);

    for (String text :
        new String[] {
          "frog, mean",
          "outdoor air",
          "warmer, surface",
          "range of foam, fill and outdoor air",
          "alarm below 8 °C (46 °F)",
          "alarm above 30 °C (86 °F)",
          "comfortable above 15 °C (59 °F)",
          "coldest: 12.5 °C (54 °F) at 05:30",
          "van to hub",
          "porch",
          "temperature [°C]",
          "[°F]",
          "hours from sealing [h], local clock",
          "18:00"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
  }

  @Test
  void sectionIsNamedAndHasUnits() {
    String svg = Demo.section().svg(900, 420);

    for (String text :
        new String[] {
          "foam, inner face",
          "frog",
          "coldest: 12.5 °C (54 °F)",
          "10 °C",
          "length [mm]",
          "height [mm]",
          "°C (°F)",
          "20 (68)"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
  }

  @Test
  void marginsAreNamedAndHaveUnits() {
    String svg = Demo.margins().svg(900, 420);

    for (String text :
        new String[] {
          "mailing bag",
          "edge of the alarm band",
          "−6.4 K (−8.2 to −4.9)",
          "cold side at 04:00",
          "margin to the edge of the alarm band [K], [F°]"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
  }

  @Test
  void readersOfUsUnitsFindThemFirst() {
    String chart = Demo.temperatureBuilder().units(Units.US).build().svg(900, 420);
    for (String text : List.of(">temperature [°F]<", ">[°C]<", ">alarm below 46 °F (8 °C)<")) {
      assertTrue(chart.contains(text), text + " in " + chart);
    }
    MarginBar five = new MarginBar("foam", 5 / 1.8, new Range(-1 / 1.8, 10 / 1.8), "");
    String margins =
        MarginChart.titled("Margins").units(Units.US).margin(five).build().svg(900, 220);
    for (String text : List.of(">5.0 F° (−1.0 to 10.0)<", ">[F°]<", ">[K]<")) {
      assertTrue(margins.contains(text), text + " in " + margins);
    }
    assertTrue(margins.contains("alarm band [F°], [K]<"), margins);
    String section =
        SectionPicture.titled("Section", Demo.field())
            .units(Units.US)
            .isotherm(Temperatures.fromFahrenheit(50))
            .build()
            .svg(900, 420);
    for (String text : List.of(">x [in]<", ">z [in]<", ">°F (°C)<", ">50 °F<")) {
      assertTrue(section.contains(text), text + " in " + section);
    }
  }

  @Test
  void everyLegOfFourDaysIsNamedAndTheClockHasDays() {
    String svg = Demo.longTemperature().svg(900, 420);

    for (String text :
        new String[] {
          "home",
          "van to depot",
          "counter",
          "lorry",
          "depot over Sunday",
          "van",
          "aircraft and hubs",
          "porch",
          "13 Dec 16:00",
          "17 Dec 16:00"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
  }

  @Test
  void heatIsNamedAndHasSharesAndUnits() {
    String power = Demo.heat().svg(900, 420);
    String heat = Demo.heatWithGap().svg(900, 420);

    for (String text :
        new String[] {
          "heat comes from",
          "warmer on the lid",
          "1.62 W (99 %)",
          "heat goes to",
          "out through the lid",
          "1.08 W (66 %)",
          "−0.03 W (−2 %)",
          "heat flow [W]; left of zero: the other way round"
        }) {
      assertTrue(power.contains(">" + text + "</text>"), text);
    }
    assertFalse(power.contains("not accounted for"));
    assertTrue(heat.contains(">not accounted for</text>"));
    assertTrue(heat.contains(">40 kJ (50 %)</text>"));
    assertTrue(heat.contains(">heat [kJ]</text>"));
    assertEquals(
        "picture size: a chart of 7 parts needs a height of at least 297 pixels",
        assertThrows(InvalidInputException.class, () -> Demo.heat().svg(900, 290)).getMessage());
  }

  @Test
  void refusesSizesThatCannotShowThePicture() throws Exception {
    Picture chart = Demo.temperature();
    Picture margins = Demo.margins();

    assertThrows(InvalidInputException.class, () -> chart.svg(599, 420));
    assertThrows(InvalidInputException.class, () -> chart.svg(900, 8001));
    assertThrows(InvalidInputException.class, () -> chart.svg(900, 220));
    assertEquals(
        "picture size: a chart of 4 packings needs a height of at least 262 pixels",
        assertThrows(InvalidInputException.class, () -> margins.svg(900, 250)).getMessage());
    assertWithin(chart.svg(900, 300), 900, 300);
    assertWithin(margins.svg(900, 262), 900, 262);
  }
}
