package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.text.TextFormatException;

/** Each fault of a file gives one message that names the place. */
class ScenarioFaultsTest {
  static Stream<Arguments> faults() {
    return Stream.of(
        arguments("format: 1\n", "", "s.yaml:1:1: must begin with the line format: 1"),
        arguments("format: 1", "format: 2", "s.yaml:1:9: format: this version reads format 1 only"),
        arguments(
            "format: 1\ntitle: A gecko goes west\n",
            "title: A gecko goes west\nformat: 1\n",
            "s.yaml:2:1: format: must be the first key"),
        arguments(
            "title: A gecko goes west\n",
            "",
            "s.yaml:1:1: title: is missing and must be given, write for example title: A gecko goes west"),
        arguments(
            "title:",
            "titel:",
            "s.yaml:2:1: titel: unknown key, allowed are format, title, units, animal, cup, containers, hold, journey, packings, mishaps, forecast. Did you mean 'title'?"),
        arguments(
            "title: A gecko goes west\n",
            "title: A gecko goes west\nsealed: 2026-01-05 18:00\n",
            "s.yaml:3:1: sealed: unknown key here, it stands indented under 'journey'"),
        arguments(
            "animal: leopard gecko, 40 g",
            "animal: leopard geko, 40 g",
            "s.yaml:3:9: animal: there is no \"leopard geko\". Did you mean \"leopard gecko\"?"),
        arguments(
            "animal: leopard gecko, 40 g",
            "animal: leopard gecko",
            "s.yaml:3:9: animal: must be an animal and its mass with its unit, write for example \"leopard gecko, 40 g\""),
        arguments(
            "animal: leopard gecko, 40 g",
            "animal: leopard gecko, 40",
            "s.yaml:3:9: animal: '40' has no unit, write for example 40 g or 40 kg"),
        arguments(
            "animal: leopard gecko, 40 g",
            "animal: leopard gecko, 12,5 g",
            "s.yaml:3:9: animal: '12,5 g' has a comma, write a point as the decimal mark (2.5) and do not group digits (1000)"),
        arguments(
            "animal: leopard gecko, 40 g",
            "animal: leopard gecko, 40 kg",
            "s.yaml:3:9: animal: animal mass: 40 kg must lie between 0.1 g and 20 kg"),
        arguments(
            "animal: leopard gecko, 40 g",
            "animal: leopard gecko, -40 g",
            "s.yaml:3:9: animal: animal mass: -40 g must lie between 0.1 g and 20 kg"),
        arguments(
            "cup: 110 x 80 x 60 mm\n",
            "",
            "s.yaml:1:1: cup: is missing and must be given, write for example cup: 16 fl oz"),
        arguments(
            "cup: 110 x 80 x 60 mm",
            "cup: 110 x 80 x 60 x 5 mm",
            "s.yaml:4:6: cup: '110 x 80 x 60 x 5 mm' is not three lengths, write for example 300 x 200 x 150 mm or 12 x 8 x 6 in"),
        arguments(
            "cup: 110 x 80 x 60 mm",
            "cup: 30 x 80 x 60 mm",
            "s.yaml:4:6: cup: the animal takes 34.2 mm (1.35 in) of length but the container has 30.0 mm (1.18 in): 4.2 mm (0.17 in) too little. Take a larger one, such as 'small lidded box'"),
        arguments(
            "cup: 110 x 80 x 60 mm",
            "cup: {size: 110 x 80 x 60 mm, wal: PET 0.5 mm}",
            "s.yaml:4:31: cup.wal: unknown key, allowed are name, size, count, kind, along, wall, holes, bedding, towel, position, on-top-of, animal. Did you mean 'wall'?"),
        arguments(
            "cup: 110 x 80 x 60 mm",
            "cup: {size: 110 x 80 x 60 mm, position: [1 mm]}",
            "s.yaml:4:41: cup.position: must be the distances from the middle along length and width, and if wanted the height above the floor, write for example [10 mm, 0 mm]"),
        arguments(
            "hold: 12 h",
            "hold: -12 h",
            "s.yaml:5:7: hold: must be longer than 0 and at most 29 d"),
        arguments(
            "hold: 12 h", "hold: 40 d", "s.yaml:5:7: hold: must be longer than 0 and at most 29 d"),
        arguments(
            "hold: 12 h",
            "hold: 12",
            "s.yaml:5:7: hold: '12' has no unit, write for example 12 h or 12 min"),
        arguments(
            "hold: 12 h",
            "units: nautical",
            "s.yaml:5:8: units: unknown name 'nautical', allowed are metric, us, imperial"),
        arguments(
            "hold: 12 h",
            "hold: 12 h\nhold: 13 h",
            "s.yaml:6:1: hold: is given twice, first on line 5"),
        arguments(
            "sealed: 2013-12-12 18:00",
            "sealed: 12 December 2013",
            "s.yaml:7:11: journey.sealed: '12 December 2013' is not a date with a time: the time is missing, write for example 2026-12-01 15:00 or December 1 2026 3 pm"),
        arguments(
            "sealed: 2013-12-12 18:00",
            "sealed: 2016-01-12 18:00",
            "s.yaml:7:11: journey.sealed: needs the weather of New York from 2016-01-11 to 2016-01-14, with a day before and after the journey and its hold; the record runs from 2012-01-01 to 2015-12-31"),
        arguments(
            "sealed: 2013-12-12 18:00",
            "sealed: 2012-01-01 18:00",
            "s.yaml:7:11: journey.sealed: needs the weather of New York from 2011-12-31 to 2012-01-03, with a day before and after the journey and its hold; the record runs from 2012-01-01 to 2015-12-31"),
        arguments(
            "start: 21 °C",
            "start: 21",
            "s.yaml:8:10: journey.start: '21' has no unit, write for example 21 °C or 21 °F"),
        arguments(
            "start: 21 °C",
            "start: -200 °C",
            "s.yaml:8:10: journey.start: -200 °C is too cold for a parcel with an animal, which is at least -5 °C"),
        arguments(
            "from: New York, UTC-5",
            "from: New Yrok, UTC-5",
            "s.yaml:9:9: journey.from: place: \"New Yrok\" has no recorded weather. Did you mean \"New York\"? Recorded places: New York, Seattle. For others write lows/highs: 28 to 45 °F under journey, for both ends, or for one end {name: New Yrok, utc: UTC-05:00, lows/highs: 28 to 45 °F}"),
        arguments(
            "from: New York, UTC-5",
            "from: New York",
            "s.yaml:9:9: journey.from: must be a place and its offset from UTC, write for example \"New York, UTC-5\""),
        arguments(
            "from: New York, UTC-5",
            "from: New York, EST",
            "s.yaml:9:9: journey.from: 'EST' is not an offset from UTC, write for example UTC-5 or -05:00; in the United States it is UTC-5"),
        arguments(
            "journey:\n",
            "journey: overnight by air\njourny:\n",
            "s.yaml:6:10: journey: must be a template and a daily low and high, write for example \"overnight by air, 28 to 45 °F\", or write the journey out\ns.yaml:7:1: journy: unknown key, allowed are format, title, units, animal, cup, containers, hold, journey, packings, mishaps, forecast. Did you mean 'journey'?"),
        arguments(
            "at: origin",
            "at: orign",
            "s.yaml:12:23: journey.legs[0].at (van): unknown name 'orign', allowed are origin, destination. Did you mean 'origin'?"),
        arguments(
            "for: 2 h",
            "for: -2 h",
            "s.yaml:12:36: journey.legs[0].for (van): must lie between 1 min and 30 d"),
        arguments(
            "for: 2 h",
            "for: 2",
            "s.yaml:12:36: journey.legs[0].for (van): '2' has no unit, write for example 2 h or 2 min"),
        arguments(
            "for: 2 h",
            "for: 31 d",
            "s.yaml:12:36: journey.legs[0].for (van): must lie between 1 min and 30 d"),
        arguments(
            "for: 2 h, ",
            "",
            "s.yaml:12:7: journey.legs[0].for (van): is missing and must be given, write for example for: 8 h"),
        arguments(
            "ambient: outdoors",
            "ambient: outdoor",
            "s.yaml:12:50: journey.legs[0].ambient (van): there is no \"outdoor\". Did you mean \"outdoors\"? Or write a temperature such as 12 °C, or a daily low and high such as -2 to 6 °C"),
        arguments(
            "ambient: outdoors",
            "ambient: 6 to -2 °C",
            "s.yaml:12:50: journey.legs[0].ambient (van): '6 to -2 °C' must have the lower temperature first, write -2 to 6 °C"),
        arguments(
            "ambient: 12 °C",
            "ambient: 12",
            "s.yaml:13:72: journey.legs[1].ambient (aircraft hold): '12' has no unit, write for example 12 °C or 12 °F"),
        arguments(
            "ambient: 12 °C",
            "ambient: 300 °C",
            "s.yaml:13:72: journey.legs[1].ambient (aircraft hold): 300 °C is too hot for the air of a leg, which is at most 60 °C. Did you mean K?"),
        arguments(
            "ambient: 12 °C",
            "ambient: 12 °C, sun: yes",
            "s.yaml:13:84: journey.legs[1].sun (aircraft hold): needs latitude and longitude of Seattle"),
        arguments(
            "ambient: 12 °C",
            "ambient: 12 °C, altitude: 20000 m",
            "s.yaml:13:89: journey.legs[1].altitude (aircraft hold): 20000 m must lie between -500 m and 5500 m. Cabins and holds of aircraft are kept at 2400 m or less: 8000 ft are 2438 m."),
        arguments(
            "ambient: 12 °C",
            "ambient: 12 °C, orientation: on its side",
            "s.yaml:13:92: journey.legs[1].orientation (aircraft hold): unknown name 'on its side', allowed are lid up, lid down, left up, right up, front up, back up"),
        arguments(
            "spread: 1.5 K",
            "spread: 1.5 °C",
            "s.yaml:18:15: journey.legs[2].spread (doorstep): '1.5 °C' is not a temperature difference, the unit must be one of K, C°, F°"),
        arguments(
            "spread: 1.5 K",
            "spread: -1.5 K",
            "s.yaml:18:15: journey.legs[2].spread (doorstep): ambient spread: -1.5 K must lie between 0 K and 30 K. It is a difference: 9 F° of difference are 5 K."),
        arguments(
            "wind: 1 m/s",
            "wind: 30 m/s",
            "s.yaml:19:13: journey.legs[2].wind (doorstep): air speed: 30 m/s must lie between 0 m/s and 10 m/s. Speeds are those next to the parcel, in metres per second: 10 mph are 4.5 m/s."),
        arguments(
            "wind: 1 m/s",
            "wnd: 1 m/s",
            "s.yaml:19:7: journey.legs[2].wnd (doorstep): unknown key, allowed are name, at, for, until, delay, ambient, spread, stowed, wind, resting, orientation, altitude, sun, sky, heading, touches. Did you mean 'wind'?"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "box: 203 x 180 x 150",
            "s.yaml:22:10: packings[0].box (carton): '203 x 180 x 150' needs one unit at the end or one for each length, write for example 203 x 180 x 150 mm or 203 x 180 x 150 in"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "box: 120 x 180 x 150 mm",
            "s.yaml:21:5: packings[0] (carton): 'cup' sticks out of the cavity at the left by 18.0 mm (0.71 in); the cavity is 74.0 x 134.0 x 104.0 mm (2.91 x 5.28 x 4.09 in). It would fit into 128 x 82 x 72 mm (5.1 x 3.3 x 2.9 in) inside, such as a carton of 7 x 7 x 6 in or 20 x 15 x 15 cm"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "box: 203 x 180 x 110 mm",
            "s.yaml:21:5: packings[0] (carton): 'warmer' overlaps 'cup' by 8.0 mm (0.31 in); the cavity is 157.0 x 134.0 x 64.0 mm (6.18 x 5.28 x 2.52 in). It would fit into 128 x 82 x 72 mm (5.1 x 3.3 x 2.9 in) inside, such as a carton of 7 x 7 x 6 in or 20 x 15 x 15 cm"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "box: 203 x 180 x 40 mm",
            "s.yaml:22:10: packings[0].box (carton): walls leave no room inside along the height, where they take 46.0 mm (1.81 in) of 40.0 mm (1.57 in). What lies in it would fit into 128 x 82 x 72 mm (5.1 x 3.3 x 2.9 in) inside, such as a carton of 7 x 7 x 6 in or 20 x 15 x 15 cm"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "vent: 2 holes",
            "s.yaml:22:5: packings[0].vent (carton): unknown key. Did you mean 'holes'?"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "coldPack: 1",
            "s.yaml:22:5: packings[0].coldPack (carton): unknown key"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: EPS 20",
            "s.yaml:23:11: packings[0].foam (carton): must be a material and a thickness with its unit, write for example EPS 20 19 mm or EPS 20 3/4 in"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: 3/4",
            "s.yaml:23:11: packings[0].foam (carton): has neither a unit nor a material, write for example foam 3/4 in"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: XPS 1.5",
            "s.yaml:23:11: packings[0].foam (carton): has no unit, write for example XPS 1.5 in"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: EPS 90, 19 mm",
            "s.yaml:23:11: packings[0].foam (carton): density of EPS: 90 kg/m3 must lie between 8 kg/m3 and 55 kg/m3. The curve of EN 13163 is meant for these densities; boxes have 12 to 30 kg/m3."),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: PIRR, 19 mm",
            "s.yaml:23:11: packings[0].foam (carton): material: there is no \"PIRR\". Did you mean \"PIR\"?"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: PIR, 0 mm",
            "s.yaml:23:11: packings[0].foam (carton): thickness of a layer of PIR: 0 mm must be above 0"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: PIR, 19 kg",
            "s.yaml:23:11: packings[0].foam (carton): '19 kg' is not a length, the unit must be one of mm, cm, m, in, ft"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: none\n    board: none",
            "s.yaml:23:11: packings[0].foam (carton): wall at the left: has no layer"),
        arguments(
            "fill: shredded paper",
            "fill: shreded paper",
            "s.yaml:24:11: packings[0].fill (carton): material: there is no \"shreded paper\". Did you mean \"shredded paper\"?"),
        arguments(
            "warmer: 40 hour warmer on lid",
            "warmer: 40 hour warmr on lid",
            "s.yaml:25:13: packings[0].warmer (carton): there is no \"40 hour warmr\". Did you mean \"40 hour warmer\"?"),
        arguments(
            "warmer: 40 hour warmer on lid",
            "warmer: 40 hour warmer",
            "s.yaml:25:13: packings[0].warmer (carton): must say where the warmer is, write for example 40 hour warmer on lid, or give its position"),
        arguments(
            "warmer: 40 hour warmer on lid",
            "warmer: 40 hour warmer on lidd",
            "s.yaml:25:13: packings[0].warmer (carton): unknown name 'lidd', allowed are lid, floor, left, right, front, back, xMin, xMax, yMin, yMax, zMin, zMax. Did you mean 'lid'?"),
        arguments(
            "warmer: 40 hour warmer on lid",
            "warmer: none",
            "s.yaml:26:5: packings[0].opened (carton): has no effect without a warmer"),
        arguments(
            "warmer: 40 hour warmer on lid",
            "warmer: 40 hour warmer on floor",
            "s.yaml:21:5: packings[0] (carton): 'warmer' overlaps 'cup' by 12.0 mm (0.47 in); the cavity is 157.0 x 134.0 x 104.0 mm (6.18 x 5.28 x 4.09 in). Here 'warmer' has room on lid or front. No larger box helps: move what does not fit"),
        arguments(
            "opened: 45 min before sealing",
            "opened: 45 min",
            "s.yaml:26:13: packings[0].opened (carton): must be a time before sealing, as nobody reaches into a sealed box, write for example 30 min before sealing, or at sealing"),
        arguments(
            "opened: 45 min before sealing",
            "opened: -45 min before sealing",
            "s.yaml:26:13: packings[0].opened (carton): time from sealing: -45 min must be 0 or above"),
        arguments(
            "opened: 45 min before sealing",
            "stand-off: 0 mm",
            "s.yaml:26:16: packings[0].stand-off (carton): 0 mm must be above 0"),
        arguments(
            "opened: 45 min before sealing",
            "stand-off: 20 mm\n    contact: 0.02 m2K/W",
            "s.yaml:27:5: packings[0].contact (carton): has no effect with a stand-off"),
        arguments(
            "opened: 45 min before sealing",
            "contact: -1 m2 K/W",
            "s.yaml:26:14: packings[0].contact (carton): contact resistance: -1 m2 K/W must be a finite number, 0 or above"),
        arguments(
            "name: plain",
            "name: carton",
            "s.yaml:27:11: packings[1].name (carton): an earlier packing has the same name, give each its own"),
        arguments(
            "for: 6 h\n",
            "for: 6 h\n      delay: 29 d 13 h\n",
            "s.yaml:17:7: journey.legs[2].delay (doorstep): must not be longer than 30 d together with the hold"),
        arguments(
            "shredded paper\n",
            "shredded paper\n    weight: 2 kg\n",
            "s.yaml:25:5: packings[0].weight (carton): unknown key. Did you mean 'right'?"),
        arguments(
            "at: origin, ",
            "",
            "s.yaml:12:7: journey.legs[0].at (van): is missing and must be given, write for example at: origin"),
        arguments(
            "for: 2 h,",
            "for: ,",
            "s.yaml:12:35: journey.legs[0].for: has no value, write one, for example for: 8 h, or remove the line"),
        arguments(
            "hold: 12 h",
            "hold:",
            "s.yaml:5:6: hold: has no value, write one, for example hold: 8 h, or remove the line"),
        arguments(
            "warmer on lid",
            "warmer on side",
            "s.yaml:25:13: packings[0].warmer (carton): 'side' does not say which of the four, write left or right (the ends of the box's first length), front or back (the ends of its second)"),
        arguments("format: 1", "", "s.yaml:2:1: must begin with the line format: 1"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void oneMessageForOneFault(String good, String bad, String message) {
    assertFault(ScenarioFiles.with(good, bad), message);
  }

  @Test
  void emptyListsSayNothing() {
    String good = ScenarioFiles.GOOD;
    int packings = good.indexOf("packings:");
    int legs = good.indexOf("  legs:");
    assertFault(
        good.substring(0, packings) + "packings: []\n",
        "s.yaml:20:11: packings: must not be an empty list, write an item or leave the key out");
    assertFault(
        good.substring(0, legs) + "  legs: []\n" + good.substring(packings),
        "s.yaml:11:9: journey.legs: must not be an empty list, write an item or leave the key out");
  }

  @Test
  void whatIsNotAMappingIsNoScenario() {
    assertFault("", "s.yaml:1:1: is empty");
    assertFault("- 1\n", "s.yaml:1:1: must be lines of 'key: value', not a list");
    assertFault("format: [1]\n", "s.yaml:1:9: format: must be a single value, not a list");
  }

  @Test
  void coreFaultsStayReachable() {
    TextFormatException fault =
        assertThrows(
            TextFormatException.class,
            () ->
                ScenarioReader.read(
                    "s.yaml", ScenarioFiles.with("203 x 180 x 150 mm", "203 x 180 x 110 mm")));
    assertEquals("packings[0]", fault.path());
    assertEquals(
        stenotherm.base.InvalidInputException.class,
        java.util.Objects.requireNonNull(fault.getCause()).getClass());
  }

  private static void assertFault(String text, String message) {
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> ScenarioReader.read("s.yaml", text));
    assertEquals(message, fault.getMessage());
  }
}
