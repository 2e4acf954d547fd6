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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
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
import stenotherm.words.Markup;
import stenotherm.words.Units;

class PictureTest {
  private static Arguments picture(String name, Supplier<Picture> picture) {
    return arguments(name, picture);
  }

  static Stream<Arguments> pictures() {
    return Stream.of(
        picture("temperature", Demo::temperature),
        picture("temperature-tubs", Demo::tubs),
        picture("temperature-plain", Demo::plainTemperature),
        picture("temperature-crowded", PictureTest::crowdedTemperature),
        picture("temperature-long", Demo::longTemperature),
        picture("air", Demo::air),
        picture("heat", Demo::heat),
        picture("heat-gap", Demo::heatWithGap),
        picture("odds", Demo::odds),
        picture("odds-bars", PictureTest::bars),
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

  /** Both ends, and names that take a line, two lines, and more than there is room for. */
  private static Picture bars() {
    return OddsBars.titled("How often it goes well when one thing goes wrong")
        .level("likely holds", 0.8)
        .row("as planned", 1, "more than 99")
        .row("a day late in 'night on the dock' and the warmer loose against the cup", 0.77, "77")
        .row("a name that does not end ".repeat(12), 0.3, "30")
        .row("the warmer dead", 0, "fewer than 1")
        .build();
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

  @Test
  void losesNeitherNamesOfManyCurvesNorLimitsOnAPhone() throws Exception {
    TemperatureChart chart = Demo.tubs();
    int height = chart.heightFor(340);
    String svg = chart.svg(340, height);

    save("temperature-tubs-narrow", svg);
    assertWithin(svg, 340, height);
    List<String> places =
        chart.curves.stream().map(curve -> ">" + Markup.escaped(curve.name()) + "<").toList();
    places.forEach(name -> assertTrue(svg.contains(name), name + " in " + svg));
    assertEquals(
        places, places.stream().sorted(Comparator.comparingInt(svg::indexOf)).toList(), svg);
    assertTrue(svg.contains(">too cold below 8 °C<") && svg.contains(">too hot above 30 °C<"), svg);
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
    for (int width : new int[] {360, 760, 1100}) {
      int height = Demo.sheet().heightFor(width);
      String svg = Demo.sheet().svg(width, height);
      save("sheet-" + width, svg);

      assertWithin(svg, width, height);
      assertTrue(svg.length() < 300_000, svg.length() + " bytes");
    }
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
    String narrow = picture.get().svg(360, 520);
    save(name + "-narrow", narrow);
    assertWithin(narrow, 360, 520);
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
          "worst case",
          "too cold below 8 °C",
          "too hot above 30 °C",
          "comfortable above 15 °C",
          "coldest: 12.5 °C at 05:30",
          "van to hub",
          "porch",
          "temperature [°C]",
          "hours from sealing, clock where the parcel is",
          "18:00"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
  }

  /** Levels are told apart by lines, words and lightness, never by a colour alone. */
  @Test
  void oddsAreNamedAndHaveUnits() {
    String svg = Demo.odds().svg(900, 420);

    for (String text :
        new String[] {
          "a box, with warmer",
          "a box, no warmer",
          "holds",
          "too cold",
          "too hot",
          "95 %",
          "95 % or more: holds",
          "80 % or more: likely holds",
          "50 % or more: a gamble",
          "less: do not send it like this",
          "low at the origin [°C]",
          "low at the destination [°C]"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
    assertTrue(svg.indexOf(">95 % or more") < svg.indexOf(">50 % or more"), svg);
    assertThrows(
        InvalidInputException.class,
        () ->
            new OddsField(
                "odds",
                new double[] {280, 290},
                new double[] {280, 290},
                new double[1][2],
                new String[2][2]));
  }

  /** A word upon the line around a level would name both sides of it. */
  @Test
  void noWordLiesOnTheEdgeOfALevel() throws Exception {
    for (int width : new int[] {340, 760}) {
      String svg = Demo.odds().svg(width, Demo.odds().heightFor(width));
      save("odds-" + width, svg);
      NodeList all = root(svg).getElementsByTagName("*");
      List<Area> words = new ArrayList<>();
      List<Pixel[]> edges = new ArrayList<>();
      for (int i = 0; i < all.getLength(); i++) {
        Element element = (Element) all.item(i);
        String text = element.getTextContent();
        if (element.getTagName().equals("text") && WORDS.contains(text)) {
          words.add(extentOfText(element));
        }
        if (element.getTagName().equals("path")
            && LEVELS.contains(element.getAttribute("stroke-width"))) {
          edges.addAll(pieces(element.getAttribute("d")));
        }
      }
      assertTrue(words.size() > 4 && edges.size() > 40, words.size() + " " + edges.size());
      for (Area word : words) {
        assertTrue(
            edges.stream().noneMatch(edge -> word.touches(edge[0], edge[1])), word + " " + width);
      }
    }
  }

  /** Widths of the lines around levels. */
  private static final List<String> LEVELS = List.of("2.2", "1.6");

  private static final List<String> WORDS =
      List.of("a gamble", "likely holds", "holds", "too cold", "too hot");

  private static List<Pixel[]> pieces(String path) {
    List<Pixel[]> pieces = new ArrayList<>();
    for (String line : path.substring(1).split("M", -1)) {
      String[] numbers = line.split("[L ]+", -1);
      for (int at = 2; at + 1 < numbers.length; at += 2) {
        pieces.add(new Pixel[] {pixel(numbers, at - 2), pixel(numbers, at)});
      }
    }
    return pieces;
  }

  private static Pixel pixel(String[] numbers, int at) {
    return new Pixel(Double.parseDouble(numbers[at]), Double.parseDouble(numbers[at + 1]));
  }

  /** Neither the axis nor the line of a level runs through a name or a number. */
  @Test
  void noLineRunsThroughTextsBesideBars() throws Exception {
    OddsBars bars = (OddsBars) bars();
    for (int width : new int[] {340, 760}) {
      NodeList all = root(bars.svg(width, bars.heightFor(width))).getElementsByTagName("*");
      List<Area> texts = new ArrayList<>();
      List<Area> lines = new ArrayList<>();
      for (int i = 2; i < all.getLength(); i++) {
        Element element = (Element) all.item(i);
        // what is white stands upon its bar, which covers the lines
        if (element.getTagName().equals("text")
            && !element.getAttribute("fill").equals("#ffffff")) {
          texts.add(extentOfText(element));
        }
        if (element.getTagName().equals("path")
            && !element.getAttribute("stroke").equals("#e1e1e1")) {
          lines.add(extent(element));
        }
      }
      assertTrue(texts.size() > 10 && !lines.isEmpty());
      for (Area text : texts) {
        assertTrue(lines.stream().noneMatch(text::overlaps), text + " at " + width);
      }
    }
  }

  @Test
  void sectionIsNamedAndHasUnits() {
    String svg = Demo.section().svg(900, 420);

    for (String text :
        new String[] {
          "2  foam, inner face",
          "6  frog",
          "7  coldest: 12.5 °C",
          "6",
          "7",
          "10 °C",
          "length [mm]",
          "height [mm]",
          "°C",
          "20"
        }) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
  }

  @Test
  void readersOfUsUnitsFindThemAlone() {
    String chart = Demo.temperatureBuilder().units(Units.US).build().svg(900, 420);
    for (String text : List.of(">temperature [°F]<", ">too cold below 46 °F<")) {
      assertTrue(chart.contains(text), text + " in " + chart);
    }
    String section =
        SectionPicture.titled("Section", Demo.field())
            .units(Units.US)
            .isotherm(Temperatures.fromFahrenheit(50))
            .build()
            .svg(900, 420);
    for (String text : List.of(">x [in]<", ">z [in]<", ">°F<", ">50 °F<")) {
      assertTrue(section.contains(text), text + " in " + section);
    }
    assertFalse(section.contains("°C"), section);
  }

  /** Letters against the lightest and the darkest ground that charts have under them: 4.5 to 1. */
  @Test
  void lettersHaveContrast() throws Exception {
    List<Color> grounds = List.of(Color.WHITE, new Color(228, 228, 228));
    for (Picture picture : List.of(Demo.temperature(), Demo.longTemperature(), Demo.heat())) {
      NodeList texts = root(picture.svg(900, 420)).getElementsByTagName("text");
      for (int i = 0; i < texts.getLength(); i++) {
        Element text = (Element) texts.item(i);
        for (Color ground : text.hasAttribute("aria-hidden") ? List.<Color>of() : grounds) {
          Color ink = color(text.getAttribute("fill"));
          assertTrue(contrast(ink, ground) >= 4.5, text.getTextContent() + " on " + ground);
        }
      }
    }
    for (Color color : Look.CURVE_COLORS) {
      assertTrue(contrast(color.forLetters(), grounds.get(1)) >= 4.5, color.hex());
    }
  }

  private static Color color(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return new Color(rgb >> 16, rgb >> 8 & 255, rgb & 255);
  }

  /** Contrast as the Web Content Accessibility Guidelines 2.1 define it. */
  private static double contrast(Color one, Color other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double luminance(Color color) {
    return 0.2126 * linear(color.red())
        + 0.7152 * linear(color.green())
        + 0.0722 * linear(color.blue());
  }

  private static double linear(int value) {
    double share = value / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
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

  /** On a telephone the names of legs do not fit: numbers, and every name in full below. */
  @Test
  void legsWithoutRoomForTheirNamesHaveNumbersAndAKey() throws Exception {
    TemperatureChart chart = Demo.longTemperature();
    NodeList texts = root(chart.svg(340, chart.heightFor(340))).getElementsByTagName("text");
    List<String> all =
        IntStream.range(0, texts.getLength())
            .mapToObj(number -> texts.item(number).getTextContent())
            .toList();
    String whole = String.join("; ", all);
    assertTrue(
        whole.contains(
            "1 home; 2 van to depot; 3 counter; 4 lorry; 5 depot over Sunday; 6 van; 7 aircraft and"
                + " hubs; 8 porch"),
        whole);
    for (int leg = 1; leg <= 8; leg++) {
      assertTrue(all.contains(Integer.toString(leg)), leg + " in " + whole);
    }
    assertFalse(whole.contains("…"), whole);
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
          "heat flow [W]; left of zero: reversed"
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

    assertThrows(InvalidInputException.class, () -> chart.svg(339, 420));
    assertThrows(InvalidInputException.class, () -> chart.svg(900, 8001));
    assertThrows(InvalidInputException.class, () -> chart.svg(900, 220));
    assertWithin(chart.svg(900, 300), 900, 300);
  }
}
