package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.ScenarioReader;

class SheetWeatherTest {
  private static List<String> sentences(String journey) {
    return new SheetWeather(
            ScenarioReader.read(
                "weather.yaml",
                """
                format: 1
                title: Weather
                animal: leopard gecko, 40 g
                cup: 16 oz deli cup
                packings:
                  - {name: box, box: 7 x 7 x 6 in carton, foam: foam 19 mm, fill: shredded paper}
                journey:
                """
                    + journey.indent(2)))
        .sentences();
  }

  /** Vans and holds are warmer than the forecast that went in. */
  @Test
  void aForecastIsNamedAsItWentIn() {
    assertEquals(
        List.of(
            "If a low under 9 °C or a high above 18 °C is forecast at either end: compute anew."),
        sentences("template: overnight by air\nlows/highs: 9 to 18 °C"));
  }

  /** Of several days those until opening count. */
  @Test
  void eachEndHasItsOwnForecast() {
    assertEquals(
        List.of(
            "If a low under -3 °C or a high above 6 °C is forecast at here, or a low under 8 °C or a"
                + " high above 16 °C is forecast at there: compute anew."),
        sentences(
            """
            template: overnight by air
            sealed: 2026-01-15 16:00
            from: {name: here, utc: UTC-5, lows/highs: [-2 to 5 °C, -3 to 6 °C, -20 to 9 °C]}
            to: {name: there, utc: UTC-8, lows/highs: 8 to 16 °C}
            """));
  }

  @Test
  void recordedWeatherHasItsDate() {
    assertEquals(
        List.of(
            "In other weather than that on record at New York and Seattle for Wednesday 15 January"
                + " 2014 to Thursday 16 January 2014: compute anew."),
        sentences(
            """
            template: overnight by air
            sealed: 2014-01-15 16:00
            from: New York, UTC-5
            to: Seattle, UTC-8
            """));
  }

  @Test
  void airThatOwesNothingToTheWeatherIsNamedItself() {
    assertEquals(
        List.of(
            "If the air around the box may at any time be below 19 °C or above 22 °C: no forecast"
                + " was read, compute anew."),
        sentences(
            """
            legs:
              - {name: depot, at: origin, for: 18 h, ambient: 19 °C}
              - {name: shop, at: destination, for: 6 h, ambient: 22 °C}
            """));
  }
}
