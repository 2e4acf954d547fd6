package stenotherm.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.base.Range;

class ScalarNodeTest {
  private static final Map<String, Integer> KINDS = kinds();

  private static Map<String, Integer> kinds() {
    Map<String, Integer> kinds = new LinkedHashMap<>();
    kinds.put("steady", 1);
    kinds.put("transient", 2);
    return kinds;
  }

  private static Node parse(String yaml) {
    return Document.parse("f", "a: " + yaml + "\n").root().asMapping().require("a");
  }

  private static Arguments value(
      String yaml, Function<ScalarNode, Object> reading, Object expected) {
    return arguments(yaml, reading, expected);
  }

  static Stream<Arguments> good() {
    return Stream.of(
        value("28 °F", ScalarNode::temperature, -4 / 1.8 + 273.15),
        value("-2.5 °C", ScalarNode::temperature, 270.65),
        value("−2.5°C", ScalarNode::temperature, 270.65),
        value("20 C", ScalarNode::temperature, 293.15),
        value("20 degC", ScalarNode::temperature, 293.15),
        value("68 deg F", ScalarNode::temperature, 293.15),
        value("293.15 K", ScalarNode::temperature, 293.15),
        value("5 K", ScalarNode::temperatureDifference, 5.0),
        value("5 C°", ScalarNode::temperatureDifference, 5.0),
        value("9 F°", ScalarNode::temperatureDifference, 5.0),
        value("19 mm", ScalarNode::length, 0.019),
        value("30cm", ScalarNode::length, 0.3),
        value(".5 m", ScalarNode::length, 0.5),
        value("0.75 in", ScalarNode::length, 0.01905),
        value("10\"", ScalarNode::length, 0.254),
        value("3/4 in", ScalarNode::length, 0.01905),
        value("1 1/2 in", ScalarNode::length, 0.0381),
        value("1-1/2in", ScalarNode::length, 0.0381),
        value("-1 1/2 in", ScalarNode::length, -0.0381),
        value("10 x 5 x 2 1/2 in", ScalarNode::size, new Size(0.254, 0.127, 0.0635)),
        value("2 ft", ScalarNode::length, 0.6096),
        value("300 x 200 x 150 mm", ScalarNode::size, new Size(0.3, 0.2, 0.15)),
        value("10 by 5 by 2½ in.", ScalarNode::size, new Size(0.254, 0.127, 0.0635)),
        value("10 in. x 5 in. x 2 1⁄2 in.", ScalarNode::size, new Size(0.254, 0.127, 0.0635)),
        value("¾ in", ScalarNode::length, 0.01905),
        value("1½ inches", ScalarNode::length, 0.0381),
        value("19 millimeters", ScalarNode::length, 0.019),
        value("30 centimetres", ScalarNode::length, 0.3),
        value("300 x 200 x 150 mm", ScalarNode::factors, 3),
        value("16 oz box", ScalarNode::factors, 1),
        value("lidded box 2", ScalarNode::factors, 1),
        value("45 grams", ScalarNode::mass, 0.045),
        value("45 gms", ScalarNode::mass, 0.045),
        value("2 kilos", ScalarNode::mass, 2.0),
        value("16 ounces", ScalarNode::mass, 0.45359237),
        value("15 1/2 oz.", ScalarNode::mass, 15.5 * 0.45359237 / 16),
        value("½ lb", ScalarNode::mass, 0.45359237 / 2),
        value("2 pounds", ScalarNode::mass, 2 * 0.45359237),
        value("36 hrs", ScalarNode::duration, 129600.0),
        value("90 mins", ScalarNode::duration, 5400.0),
        value("68 degrees F", ScalarNode::temperature, 293.15),
        value("68 degrees Fahrenheit", ScalarNode::temperature, 293.15),
        value("20℃", ScalarNode::temperature, 293.15),
        value("68° to 86°F", Node::temperatureRange, new Range(293.15, 303.15)),
        value("20 degrees to 30 °C", Node::temperatureRange, new Range(293.15, 303.15)),
        value("2013-1-2 18:00", ScalarNode::localDateTime, LocalDateTime.of(2013, 1, 2, 18, 0)),
        value("300×200×150mm", ScalarNode::size, new Size(0.3, 0.2, 0.15)),
        value("1 ft x 10 in x 150 mm", ScalarNode::size, new Size(0.3048, 0.254, 0.15)),
        value("12 g", ScalarNode::mass, 0.012),
        value("1.5 kg", ScalarNode::mass, 1.5),
        value("1 lb", ScalarNode::mass, 0.45359237),
        value("16 oz", ScalarNode::mass, 0.45359237),
        value("90 min", ScalarNode::duration, 5400.0),
        value("1 h 30 min", ScalarNode::duration, 5400.0),
        value("1d 1h30min10s", ScalarNode::duration, 91810.0),
        value("36 hours", ScalarNode::duration, 129600.0),
        value("2 m/s", ScalarNode::speed, 2.0),
        value("36 km/h", ScalarNode::speed, 10.0),
        value("5 mph", ScalarNode::speed, 2.2352),
        value("0.05 m2K/W", ScalarNode::thermalResistance, 0.05),
        value("0.05 m² K/W", ScalarNode::thermalResistance, 0.05),
        value("20 %", ScalarNode::percentage, 0.2),
        value("2013-12-12 18:00", ScalarNode::localDateTime, LocalDateTime.of(2013, 12, 12, 18, 0)),
        value("2013-12-12 6 pm", ScalarNode::localDateTime, LocalDateTime.of(2013, 12, 12, 18, 0)),
        value(
            "January 15, 2026, 3:30 PM",
            ScalarNode::localDateTime,
            LocalDateTime.of(2026, 1, 15, 15, 30)),
        value(
            "Jan. 5th 2026 at 12:30 a.m.",
            ScalarNode::localDateTime,
            LocalDateTime.of(2026, 1, 5, 0, 30)),
        value("15 sept 2026 06:00", ScalarNode::localDateTime, LocalDateTime.of(2026, 9, 15, 6, 0)),
        value("7/15/2026 5 p.m.", ScalarNode::localDateTime, LocalDateTime.of(2026, 7, 15, 17, 0)),
        value("07-15-2026 15:00", ScalarNode::localDateTime, LocalDateTime.of(2026, 7, 15, 15, 0)),
        value(
            "7/15/2026 04:30:15 PM",
            ScalarNode::localDateTime,
            LocalDateTime.of(2026, 7, 15, 16, 30, 15)),
        value("2026/7/5 15:00", ScalarNode::localDateTime, LocalDateTime.of(2026, 7, 5, 15, 0)),
        value("7/15/2026", ScalarNode::date, LocalDate.of(2026, 7, 15)),
        value("15.10.2026", ScalarNode::date, LocalDate.of(2026, 10, 15)),
        value("January 15, 2026", ScalarNode::date, LocalDate.of(2026, 1, 15)),
        value("3 May 2026", ScalarNode::date, LocalDate.of(2026, 5, 3)),
        value("3pm", ScalarNode::clock, LocalTime.of(15, 0)),
        value("12:01 pm", ScalarNode::clock, LocalTime.of(12, 1)),
        value("2026-1", ScalarNode::isDated, true),
        value("3 May", ScalarNode::isDated, true),
        value("3 pm", ScalarNode::isDated, false),
        value(
            "2013-12-12T18:00:30",
            ScalarNode::localDateTime,
            LocalDateTime.of(2013, 12, 12, 18, 0, 30)),
        value("18:00", ScalarNode::clock, LocalTime.of(18, 0)),
        value("UTC-5", ScalarNode::utcOffset, ZoneOffset.ofHours(-5)),
        value("UTC+5:30", ScalarNode::utcOffset, ZoneOffset.ofHoursMinutes(5, 30)),
        value("-05:00", ScalarNode::utcOffset, ZoneOffset.ofHours(-5)),
        value("UTC", ScalarNode::utcOffset, ZoneOffset.UTC),
        value(
            "28 to 45 °F", Node::temperatureRange, new Range(-4 / 1.8 + 273.15, 13 / 1.8 + 273.15)),
        value("20 °C to 86 °F", Node::temperatureRange, new Range(293.15, 303.15)),
        value("transient", node -> node.choice(KINDS), 2),
        // What YAML would guess to be something else.
        value("no", ScalarNode::text, "no"),
        value("off", ScalarNode::text, "off"),
        value("1_000", ScalarNode::text, "1_000"),
        value("18:00", ScalarNode::text, "18:00"),
        value("2013-12-12", ScalarNode::text, "2013-12-12"),
        value("1e3", ScalarNode::number, 1000.0),
        value("\"12\"", ScalarNode::number, 12.0),
        value("yes", ScalarNode::yesOrNo, true),
        value("no", ScalarNode::yesOrNo, false));
  }

  @ParameterizedTest
  @MethodSource
  void good(String yaml, Function<ScalarNode, Object> reading, Object expected) {
    Object actual = reading.apply(parse(yaml).asScalar());

    if (expected instanceof Double number) {
      assertEquals(number, (Double) actual, 4 * Math.ulp(number));
    } else {
      assertEquals(expected, actual);
    }
  }

  static Stream<Arguments> bad() {
    String order =
        " is not a date with a time: which number is the month is not certain: write its name or"
            + " year-month-day, then the time";
    String example = ", write for example 2026-12-01 15:00 or December 1 2026 3 pm";
    String time = " is not a date with a time: the time is written as in 15:00 or 3 pm" + example;
    String zone = " is not a date with a time: hours are those of the clock at the place, leave '";
    String comma =
        " has a comma, write a point as the decimal mark (2.5) and do not group digits (1000)";
    String duration = " is not a duration, write for example 90 min or 1 h 30 min";
    return Stream.of(
        value("28", ScalarNode::temperature, "'28' has no unit, write for example 28 °C or 28 °F"),
        value(
            "warm",
            ScalarNode::temperature,
            "'warm' is not a temperature, write for example 20 °C or 68 °F"),
        value(
            "28 kg",
            ScalarNode::temperature,
            "'28 kg' is not a temperature, the unit must be one of °C, °F, K"),
        value(
            "28 f",
            ScalarNode::temperature,
            "'28 f' is not a temperature, the unit must be one of °C, °F, K. Did you mean '°F'?"),
        value("2,5 °C", ScalarNode::temperature, "'2,5 °C'" + comma),
        value(
            "1_000 K",
            ScalarNode::temperature,
            "'1_000 K' has an underscore, do not group digits (1000)"),
        value(".nan", ScalarNode::temperature, "'.nan' is not a finite number"),
        value("-.inf °C", ScalarNode::temperature, "'-.inf °C' is not a finite number"),
        value("1e999 K", ScalarNode::temperature, "'1e999' is too large a number"),
        value(
            "\"[28, 45] °F\"",
            Node::temperatureRange,
            "must be two temperatures, write 28 to 45 °F or [28 °F, 45 °F], not '[28, 45] °F'"),
        value(
            "28 to 45",
            Node::temperatureRange,
            "'28 to 45' has no unit, write for example 45 °C or 45 °F"),
        value(
            "45 to 28 °F",
            Node::temperatureRange,
            "'45 to 28 °F' must have the lower temperature first, write 28 to 45 °F"),
        value(
            "45 °F - 2 °C",
            Node::temperatureRange,
            "'45 °F - 2 °C' must have the lower temperature first, write 2 °C to 45 °F"),
        value(
            "5 °C",
            ScalarNode::temperatureDifference,
            "'5 °C' is not a temperature difference, the unit must be one of K, C°, F°"),
        value(
            "30 MM",
            ScalarNode::length,
            "'30 MM' is not a length, the unit must be one of mm, cm, m, in, ft. Did you mean"
                + " 'mm'?"),
        value(
            "1.2.3 m",
            ScalarNode::length,
            "'1.2.3 m' is not a length, write for example 30 cm or 12 in"),
        value(
            "0x1F m",
            ScalarNode::length,
            "'0x1F m' is not a length, the unit must be one of mm, cm, m, in, ft"),
        value(
            "1 1/2 °C",
            ScalarNode::temperature,
            "'1 1/2 °C' is a fraction, write a decimal number as in 0.5"),
        value("1/2", ScalarNode::mass, "'1/2' has no unit, write for example 1/2 oz"),
        value(
            "28 to 45 degrees",
            Node::temperatureRange,
            "'28 to 45 degrees' has no unit, write for example 45 °C or 45 °F"),
        value(
            "8 x 8 x 7 in box",
            ScalarNode::size,
            "'8 x 8 x 7 in box' is not a length, the unit must be one of mm, cm, m, in, ft"),
        value("1/2", ScalarNode::length, "'1/2' has no unit, write for example 1/2 in"),
        value("1/0 in", ScalarNode::length, "'1/0' divides by zero"),
        value(
            "300 x 200 mm",
            ScalarNode::size,
            "'300 x 200 mm' is not three lengths, write for example 300 x 200 x 150 mm or 12 x 8 x 6 in"),
        value(
            "300 mm x 200 x 150 mm",
            ScalarNode::size,
            "'300 mm x 200 x 150 mm' needs one unit at the end or one for each length, write for"
                + " example 300 x 200 x 150 mm or 12 x 8 x 6 in"),
        value("0 x 200 x 150 mm", ScalarNode::size, "first length: 0 mm must be above 0"),
        value("1:30", ScalarNode::duration, "'1:30'" + duration),
        value("1 h -30 min", ScalarNode::duration, "'1 h -30 min'" + duration),
        value(
            "1 h 30",
            ScalarNode::duration,
            "'1 h 30' has no unit, write for example 30 h or 30 min"),
        value(
            "30 min 1 h",
            ScalarNode::duration,
            "'30 min 1 h' must go from the large unit to the small one, as in 90 min or 1 h 30"
                + " min"),
        value(
            "3 huors",
            ScalarNode::duration,
            "'3 huors' is not a duration, the unit must be one of h, min, d, s. Did you mean"
                + " 'hours'?"),
        value("20", ScalarNode::percentage, "'20' has no unit, write for example 20 %"),
        value(
            "-2013-12-12 18:00",
            ScalarNode::localDateTime,
            "'-2013-12-12 18:00' is not a date with a time, write for example 2026-12-01 15:00 or December 1 2026 3 pm"),
        value(
            "2013-02-30 18:00",
            ScalarNode::localDateTime,
            "'2013-02-30 18:00' is not a date with a time, write for example 2026-12-01 15:00 or December 1 2026 3 pm"),
        value(
            "2026-10-15",
            ScalarNode::localDateTime,
            "'2026-10-15' is not a date with a time: the time is missing, write for example"
                + " 2026-12-01 15:00 or December 1 2026 3 pm"),
        value(
            "July 15 2026",
            ScalarNode::localDateTime,
            "'July 15 2026' is not a date with a time: the time is missing" + example),
        value(
            "15 July 5 pm",
            ScalarNode::localDateTime,
            "'15 July 5 pm' is not a date with a time: the year is missing or out of its place, as"
                + " in January 15 2026"
                + example),
        value("7/5/2026", ScalarNode::localDateTime, "'7/5/2026'" + order + example),
        value("12.10.2026", ScalarNode::localDateTime, "'12.10.2026'" + order + example),
        value(
            "07-12-2026 15:00", ScalarNode::localDateTime, "'07-12-2026 15:00'" + order + example),
        value(
            "7/15/2026",
            ScalarNode::localDateTime,
            "'7/15/2026' is not a date with a time: the time is missing" + example),
        value(
            "13/15/2026 3 pm",
            ScalarNode::localDateTime,
            "'13/15/2026 3 pm' is not a date with a time" + example),
        value(
            "2/30/2026 3 pm",
            ScalarNode::localDateTime,
            "'2/30/2026 3 pm' is not a date with a time" + example),
        value(
            "7/15/26 3 pm",
            ScalarNode::localDateTime,
            "'7/15/26 3 pm' is not a date with a time: the year needs four digits, as in 2026"
                + example),
        value(
            "7/15/2026 12:00 PM",
            ScalarNode::localDateTime,
            "'7/15/2026 12:00 PM' is not a date with a time: 12 am and 12 pm are not certain: 12:00"
                + " is noon, 00:00 begins the day"
                + example),
        value("7/15/2026 4:00", ScalarNode::localDateTime, "'7/15/2026 4:00'" + time),
        value(
            "7/12/2026",
            ScalarNode::date,
            "'7/12/2026' is not a date: which number is the month is not certain: write its name or"
                + " year-month-day, write for example 2026-12-01 or December 1 2026"),
        value(
            "February 30, 2026, 5 pm",
            ScalarNode::localDateTime,
            "'February 30, 2026, 5 pm' is not a date with a time" + example),
        value(
            "2026-07-15 12 pm",
            ScalarNode::localDateTime,
            "'2026-07-15 12 pm' is not a date with a time: 12 am and 12 pm are not certain: 12:00"
                + " is noon, 00:00 begins the day"
                + example),
        value(
            "7/12/2026 5 p.m.", ScalarNode::localDateTime, "'7/12/2026 5 p.m.'" + order + example),
        value(
            "2026-07-15 5 pm EST",
            ScalarNode::localDateTime,
            "'2026-07-15 5 pm EST'" + zone + "EST' out, write 2026-07-15 5 pm"),
        value(
            "July 15 2026 5 p.m. (Eastern Time)",
            ScalarNode::localDateTime,
            "'July 15 2026 5 p.m. (Eastern Time)'"
                + zone
                + "Eastern Time' out, write July 15 2026 5 p.m."),
        value(
            "2026-07-15T17:00-05:00",
            ScalarNode::localDateTime,
            "'2026-07-15T17:00-05:00'" + zone + "-05:00' out, write 2026-07-15T17:00"),
        value(
            "Wed, July 15, 2026, 5 pm",
            ScalarNode::localDateTime,
            "'Wed, July 15, 2026, 5 pm' is not a date with a time: leave the day of the week out,"
                + " write July 15, 2026, 5 pm"),
        value("2026-07-15 17.00", ScalarNode::localDateTime, "'2026-07-15 17.00'" + time),
        value("2026-07-15 17:00 pm", ScalarNode::localDateTime, "'2026-07-15 17:00 pm'" + time),
        value("July 15, 2026, 5", ScalarNode::localDateTime, "'July 15, 2026, 5'" + time),
        value(
            "2026-07-15 noon",
            ScalarNode::localDateTime,
            "'2026-07-15 noon' is not a date with a time: noon is written 12:00, and 00:00 begins"
                + " the day"
                + example),
        // without its day it would be another moment
        value(
            "Tuesday 9 am",
            ScalarNode::clock,
            "'Tuesday 9 am' is not a time of day, write hours and minutes as in 06:30, 18:00 or"
                + " 6:30 pm"),
        value(
            "6 pm EST",
            ScalarNode::clock,
            "'6 pm EST' is not a time of day: hours are those of the clock at the place, leave"
                + " 'EST' out, write 6 pm"),
        value(
            "13 pm",
            ScalarNode::clock,
            "'13 pm' is not a time of day, write hours and minutes as in 06:30, 18:00 or 6:30 pm"),
        value(
            "6",
            ScalarNode::clock,
            "'6' is not a time of day, write hours and minutes as in 06:30, 18:00 or 6:30 pm"),
        value(
            "12:00 AM",
            ScalarNode::clock,
            "'12:00 AM' is not a time of day: 12 am and 12 pm are not certain: 12:00 is noon, 00:00"
                + " begins the day, write hours and minutes as in 06:30, 18:00 or 6:30 pm"),
        value(
            "EST",
            ScalarNode::utcOffset,
            "'EST' is not an offset from UTC, write for example UTC-5 or -05:00; in the United States it is UTC-5"),
        value("UTC+19", ScalarNode::utcOffset, "'UTC+19' must lie between UTC-18 and UTC+18"),
        value("12 g", ScalarNode::number, "'12 g' is not a number, write digits as in 12 or 2.5"),
        value("0o17", ScalarNode::number, "'0o17' is not a number, write digits as in 12 or 2.5"),
        value("1,000", ScalarNode::number, "'1,000'" + comma),
        value("off", ScalarNode::yesOrNo, "'off' is neither yes nor no"),
        value("''", ScalarNode::text, "must not be empty"),
        value(
            "stedy",
            node -> node.choice(KINDS),
            "unknown name 'stedy', allowed are steady, transient. Did you mean 'steady'?"));
  }

  @ParameterizedTest
  @MethodSource
  void bad(String yaml, Function<ScalarNode, Object> reading, String problem) {
    ScalarNode node = parse(yaml).asScalar();

    TextFormatException fault = assertThrows(TextFormatException.class, () -> reading.apply(node));

    assertEquals("f:1:4: a: " + problem, fault.getMessage());
  }
}
