package stenotherm.picture;

import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.words.Figures;

/** Pictures of invented data, crowded enough to show where labels could collide. */
final class Demo {
  private static final double HOURS = 19;

  private Demo() {}

  private static Range hours(double from, double to) {
    return new Range(Times.fromHours(from), Times.fromHours(to));
  }

  private static Range celsius(double low, double high) {
    return new Range(fromCelsius(low), fromCelsius(high));
  }

  private static Curve curve(String name, DoubleUnaryOperator celsiusOfHour) {
    int count = 400;
    double[] times = new double[count + 1];
    double[] temperatures = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      double hour = HOURS * i / count;
      times[i] = Times.fromHours(hour);
      temperatures[i] = fromCelsius(celsiusOfHour.applyAsDouble(hour));
    }
    return Curve.of(name, times, temperatures);
  }

  private static LocalDateTime sealed(int day, int hour) {
    return LocalDateTime.of(2013, 12, day, hour, 0);
  }

  private static double cup(double hour) {
    return 11.2 + 9 * Math.exp(-hour / 6) + 0.09 * Math.pow(Math.max(0, hour - 11.5), 2);
  }

  private static double outdoor(double hour) {
    return hour > 3 && hour < 9 ? 16 : 3 - 5 * Math.cos((hour - 23.5) / 24 * 2 * Math.PI);
  }

  static TemperatureChart.Builder temperatureBuilder() {
    return TemperatureChart.titled(
            "Cold side is tightest: 2.5 K left at 05:30 on the porch (8 °C alarm edge)")
        .subtitle("EPS 19 mm, one warmer, overnight by air; lows -2 °C (28 °F)")
        .curve(curve("frog, mean", Demo::cup))
        .curve(curve("outdoor air", Demo::outdoor))
        .curve(
            curve(
                "warmer, surface",
                hour -> 14 + 20 * (1 - Math.exp(-hour / 0.7)) * Math.exp(-hour / 14)))
        .uncertainty(
            new ShadedBand(
                "range of foam, fill and outdoor air",
                curve("low", hour -> cup(hour) - 0.13 * Math.min(hour, 9)),
                curve("high", hour -> cup(hour) + 0.2 * Math.min(hour, 9))))
        .worst(
            new ShadedBand(
                "worst case",
                curve("coldest", hour -> cup(hour) - 0.4 * Math.min(hour, 9)),
                curve("hottest", hour -> cup(hour) + 0.6 * Math.min(hour, 9))))
        .comfortable(celsius(15, 24))
        .alarm(celsius(8, 30))
        .leg(new ChartLeg("home", hours(0, 1)))
        .leg(new ChartLeg("van to hub", hours(1, 3)))
        .leg(new ChartLeg("sorting hall", hours(3, 5)))
        .leg(new ChartLeg("aircraft", hours(5, 8)))
        .leg(new ChartLeg("hub", hours(8, 9)))
        .leg(new ChartLeg("delivery van", hours(9, 11)))
        .leg(new ChartLeg("porch", hours(11, HOURS)))
        .marker(
            new Marker(
                "coldest: 12.5 °C at 05:30",
                new Curve.Reading(Times.fromHours(11.5), fromCelsius(cup(11.5)))))
        .clock(time -> Figures.clock(sealed(12, 18).plusSeconds(Math.round(time))));
  }

  static TemperatureChart temperature() {
    return temperatureBuilder().build();
  }

  /** Tubs beside each other, whose curves run close to each other, above much that is uncertain. */
  static TemperatureChart tubs() {
    return temperatureBuilder()
        .curve(curve("corn snake in 'right tub'", hour -> cup(hour) - 0.8))
        .curve(curve("White's tree frog in 'frog tub'", hour -> cup(hour) + 1.2))
        .build();
  }

  static TemperatureChart plainTemperature() {
    return TemperatureChart.titled("A cold frog room with nothing but one curve")
        .curve(curve("frog", hour -> 18 - 0.2 * hour))
        .build();
  }

  static SectionField field() {
    double[] xEdges = graded(0.30);
    double[] zEdges = graded(0.20);
    double[][] temperatures = new double[xEdges.length - 1][zEdges.length - 1];
    for (int i = 0; i < temperatures.length; i++) {
      for (int j = 0; j < temperatures[i].length; j++) {
        double x = (xEdges[i] + xEdges[i + 1]) / 2;
        double z = (zEdges[j] + zEdges[j + 1]) / 2;
        double inside = Math.min(1, Math.min(Math.min(x, 0.30 - x), Math.min(z, 0.20 - z)) / 0.025);
        double warmer = Math.exp(-(Math.pow(x - 0.15, 2) + Math.pow((z - 0.165) * 1.8, 2)) / 0.004);
        temperatures[i][j] = fromCelsius(-2 + 14 * inside + 24 * warmer * inside);
      }
    }
    return new SectionField(xEdges, zEdges, temperatures);
  }

  /** Cells of 2 mm at the walls and 6 mm inside. */
  private static double[] graded(double length) {
    int walls = 12;
    int inner = (int) Math.round((length - 0.048) / 0.006);
    double[] edges = new double[2 * walls + inner + 1];
    for (int i = 1; i < edges.length; i++) {
      double width = i <= walls || i > walls + inner ? 0.002 : (length - 0.048) / inner;
      edges[i] = edges[i - 1] + width;
    }
    return edges;
  }

  static SectionPicture section() {
    return SectionPicture.titled(
            "The frog's lower side is coldest, 2.5 K above its alarm edge", field())
        .subtitle("through the middle at 05:30, the worst moment")
        .axes("length", "height")
        .outline(new Outline("box", new Range(0, 0.30), new Range(0, 0.20)))
        .outline(new Outline("foam, inner face", new Range(0.019, 0.281), new Range(0.019, 0.181)))
        .outline(new Outline("warmer", new Range(0.10, 0.20), new Range(0.160, 0.175)))
        .outline(new Outline("cup", new Range(0.12, 0.18), new Range(0.05, 0.13)))
        .outline(new Outline("damp moss", new Range(0.122, 0.178), new Range(0.052, 0.062)))
        .outline(new Outline("frog", new Range(0.135, 0.165), new Range(0.062, 0.082)))
        .spot(new Spot("coldest: 12.5 °C", 0.15, 0.062))
        .isotherm(fromCelsius(5))
        .isotherm(fromCelsius(10))
        .isotherm(fromCelsius(15))
        .isotherm(fromCelsius(20))
        .build();
  }

  /** Four days with legs from half an hour to a day and a half. */
  static TemperatureChart longTemperature() {
    double[] ends = {1, 3.5, 4, 10, 34, 36, 88, 96};
    String[] names = {
      "home",
      "van to depot",
      "counter",
      "lorry",
      "depot over Sunday",
      "van",
      "aircraft and hubs",
      "porch"
    };
    int count = 800;
    double[] times = new double[count + 1];
    double[] frog = new double[count + 1];
    double[] air = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      double hour = 96.0 * i / count;
      times[i] = Times.fromHours(hour);
      air[i] = fromCelsius(6 - 7 * Math.cos((hour - 10) / 24 * 2 * Math.PI));
      frog[i] = fromCelsius(9 + 9 * Math.exp(-hour / 20) - 3 * Math.cos((hour - 14) / 24 * 6.28));
    }
    TemperatureChart.Builder chart =
        TemperatureChart.titled("Cold side is tightest: 1.5 K outside the alarm band at 06:00")
            .subtitle("four days with a Sunday between; lows -1 °C")
            .curve(Curve.of("frog, mean", times, frog))
            .curve(Curve.of("outdoor air", times, air))
            .comfortable(celsius(15, 24))
            .alarm(celsius(8, 30))
            .marker(
                new Marker(
                    "coldest: 6.5 °C at 06:00",
                    new Curve.Reading(Times.fromHours(86), fromCelsius(6.2))))
            .clock(
                time -> Figures.METRIC.dayAndClock(sealed(13, 16).plusSeconds(Math.round(time))));
    double start = 0;
    for (int i = 0; i < ends.length; i++) {
      chart.leg(new ChartLeg(names[i], hours(start, ends[i])));
      start = ends[i];
    }
    return chart.build();
  }

  static AirChart air() {
    HistoryChart.Line oxygen =
        new HistoryChart.Line(
            "cup",
            List.of(
                new HistoryChart.Sample(0, 20.9),
                new HistoryChart.Sample(Times.fromHours(3), 14.2),
                new HistoryChart.Sample(Times.fromHours(16), 17.5)));
    HistoryChart.Line power =
        new HistoryChart.Line(
            "warmer",
            List.of(
                new HistoryChart.Sample(0, 1.1),
                new HistoryChart.Sample(Times.fromHours(1), 2.2),
                new HistoryChart.Sample(Times.fromHours(16), 1.6)));
    return AirChart.titled("At least 14.2 % oxygen")
        .subtitle("fresh air has 21 %")
        .oxygen(oxygen)
        .power(power)
        .harmful(12)
        .least("least: 14.2 %, 15 Jan 21:00", oxygen.samples().get(1))
        .leg(new ChartLeg("van", new Range(0, Times.fromHours(8))))
        .leg(new ChartLeg("doorstep", new Range(Times.fromHours(8), Times.fromHours(16))))
        .clock(time -> "21:00")
        .build();
  }

  static HeatChart heat() {
    return HeatChart.titled(
            "Two thirds of the warmer's heat leave through the lid that it is taped to",
            HeatChart.Measure.POWER)
        .subtitle("mean from sealing to opening, nominal run")
        .from("warmer on the lid", 1.62)
        .from("gecko", 0.02)
        .to("out through the lid", 1.08)
        .to("out through the four sides", 0.44)
        .to("out through the floor", 0.17)
        .to("stored in the animal and its cup", -0.02)
        .to("stored in walls and fill", -0.03)
        .build();
  }

  static HeatChart heatWithGap() {
    return HeatChart.titled("Half of it is unknown", HeatChart.Measure.HEAT)
        .from("warmer", 80_000)
        .to("lid", 40_000)
        .build();
  }

  private static SectionPicture panel(String title, boolean plan, double warmer) {
    double[] xEdges = graded(0.30);
    double[] zEdges = graded(0.20);
    double[][] temperatures = new double[xEdges.length - 1][zEdges.length - 1];
    for (int i = 0; i < temperatures.length; i++) {
      for (int j = 0; j < temperatures[i].length; j++) {
        double x = (xEdges[i] + xEdges[i + 1]) / 2;
        double z = (zEdges[j] + zEdges[j + 1]) / 2;
        double inside = Math.min(1, Math.min(Math.min(x, 0.30 - x), Math.min(z, 0.20 - z)) / 0.025);
        double high = plan ? 0.1 : 0.165;
        double spread = plan ? 0.012 : 0.004;
        double near = Math.exp(-(Math.pow(x - 0.15, 2) + Math.pow((z - high) * 1.8, 2)) / spread);
        temperatures[i][j] = fromCelsius(-2 + 14 * inside + warmer * near * inside);
      }
    }
    SectionPicture.Builder picture =
        SectionPicture.titled(title, new SectionField(xEdges, zEdges, temperatures))
            .axes("length", plan ? "width" : "height")
            .outline(new Outline("wall, outer face", new Range(0, 0.30), new Range(0, 0.20)))
            .outline(
                new Outline("wall, inner face", new Range(0.019, 0.281), new Range(0.019, 0.181)))
            .isotherm(fromCelsius(10))
            .isotherm(fromCelsius(20));
    if (plan) {
      return picture
          .outline(new Outline("cup", new Range(0.11, 0.19), new Range(0.06, 0.14), true))
          .outline(new Outline("frog", new Range(0.135, 0.165), new Range(0.09, 0.11)))
          .outline(new Outline("gel pack", new Range(0.03, 0.09), new Range(0.03, 0.17)))
          .spot(new Spot("coldest: 12.5 °C", 0.15, 0.10))
          .build();
    }
    return picture
        .outline(new Outline("warmer", new Range(0.10, 0.20), new Range(0.160, 0.175)))
        .outline(new Outline("cup", new Range(0.11, 0.19), new Range(0.05, 0.13)))
        .outline(new Outline("bedding", new Range(0.112, 0.188), new Range(0.052, 0.062)))
        .outline(new Outline("frog", new Range(0.135, 0.165), new Range(0.062, 0.082)))
        .outline(new Outline("gel pack", new Range(0.03, 0.09), new Range(0.022, 0.042)))
        .spot(new Spot("coldest: 12.5 °C", 0.15, 0.062))
        .build();
  }

  static SectionSheet sheet() {
    return SectionSheet.titled("The warmer reaches the cup: 2.5 K left when coldest")
        .subtitle("nominal run; cuts through the middle of the animal")
        .section(panel("coldest moment, 13 Dec 05:30, from the side", false, 12))
        .section(panel("coldest moment, from above", true, 4))
        .section(panel("hottest moment, 12 Dec 20:15, from the side", false, 26))
        .section(panel("hottest moment, from above", true, 14))
        .build();
  }

  private static OddsField odds(String name, double warmer) {
    int side = 31;
    double[] lows = new double[side];
    double[][] odds = new double[side][side];
    String[][] words = new String[side][side];
    for (int i = 0; i < side; i++) {
      lows[i] = fromCelsius(-12 + 1.4 * i);
    }
    for (int i = 0; i < side; i++) {
      for (int j = 0; j < side; j++) {
        double cold = Math.min(lows[i], lows[j]) - fromCelsius(14 - warmer);
        double hot = fromCelsius(24 - warmer / 2) - Math.max(lows[i], lows[j]);
        odds[i][j] = 1 / (1 + Math.exp(-Math.min(cold, hot)));
        words[i][j] = odds[i][j] < 0.5 ? (cold < hot ? "too cold" : "too hot") : level(odds[i][j]);
      }
    }
    return new OddsField(name, lows, lows, odds, words);
  }

  private static String level(double odds) {
    return odds < 0.8 ? "a gamble" : odds < 0.95 ? "likely holds" : "holds";
  }

  static OddsChart odds() {
    return OddsChart.titled("With the warmer it holds with lows from 4 °C to 18 °C at both ends")
        .subtitle("invented odds")
        .map(odds("a box, with warmer", 12))
        .map(odds("a box, no warmer", 0))
        .axes("low at the origin", "low at the destination")
        .here(fromCelsius(7), fromCelsius(3), "lows of the file")
        .level(0.5, "a gamble")
        .level(0.95, "holds")
        .level(0.8, "likely holds")
        .rest("do not send it like this")
        .build();
  }
}
