package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.decision.Verdict;
import stenotherm.parcel.PackClass;
import stenotherm.report.Cautions;

/**
 * What the programs with one question each print: in physical order, and as the page of examples
 * says.
 */
class QuestionsTest {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  /** Rounded to half a degree, or to a tenth. */
  private static final double ROUNDED = 0.26;

  private List<String> lines = List.of();

  private void run(Consumer<String[]> program) {
    lines = Printed.by(program);
    assertEquals(Verdict.DEFER, lines.get(lines.size() - 1));
    assertFalse(String.join("\n", lines).toLowerCase(Locale.ROOT).contains("safe"));
  }

  private String line(String start) {
    return lines.stream().filter(each -> each.startsWith(start)).findFirst().orElseThrow();
  }

  /** The numbers of a row, those of its name left out. */
  private double[] row(String name) {
    return numbers(line(name).substring(name.length()));
  }

  private static double[] numbers(String text) {
    return NUMBER
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private void assertInPage(String answer) throws IOException {
    assertTrue(Files.readString(Path.of("README.md")).contains("| " + answer + " |"), answer);
  }

  private void assertGridWithin(double kelvin) {
    double[] moved = numbers(line("The animal's temperature changes by"));
    assertTrue(moved[0] <= kelvin, moved[0] + " K");
  }

  @Test
  void warmerPlace() throws IOException {
    run(WarmerPlace::main);
    double[] lid = row("lid ");
    double[] side = row("front ");
    double[] floor = row("floor ");
    assertTrue(side[0] < lid[0] && lid[0] < floor[0], "the animal lies on the floor of its cup");
    assertTrue(side[1] - side[0] > lid[1] - lid[0], "warmed from one side, least even");
    assertTrue(lid[2] > floor[2] && floor[4] > lid[4] && side[3] > lid[3], "out behind the warmer");
    for (double[] place : List.of(lid, side, floor)) {
      // what was stored while the warmer was stronger still comes out: some per cent of its power
      assertEquals(place[5], place[2] + place[3] + place[4], 0.1);
    }
    assertTrue(line("The coldest part").contains("can be burnt"), "the best place may burn");
    assertInPage(line("The coldest part"));
    assertTrue(lines.contains(Cautions.ILLUSTRATIVE));
    assertGridWithin(0.3);
  }

  @Test
  void warmerGap() throws IOException {
    run(WarmerGap::main);
    double[] hottest = lines.subList(2, 7).stream().mapToDouble(each -> numbers(each)[1]).toArray();
    for (int gap = 1; gap < hottest.length; gap++) {
      assertTrue(hottest[gap] < hottest[gap - 1], Arrays.toString(hottest));
    }
    assertEquals(33 - hottest[0], numbers(lines.get(2))[2], ROUNDED, "alarm band ends at 33 °C");
    assertInPage(line("Lying on the cup"));
    assertGridWithin(0.3);
  }

  @Test
  void holesAndSeams() throws IOException {
    run(HolesAndSeams::main);
    double[] foam = row("EPS 20, taped, no hole ");
    double[] tight = row("XPS, taped, no hole ");
    double[] above = row("XPS, taped, 4 holes in the lid ");
    double[] both = row("XPS, taped, 2 in lid, 2 in floor ");
    double[] gaps = row("XPS, not taped, no hole ");
    assertTrue(foam[0] > tight[0] && tight[0] < 1, "beads let oxygen through, XPS does not");
    assertTrue(both[0] > above[0] + 5, "a draught needs holes above and below");
    assertTrue(gaps[0] > above[0] && gaps[2] > above[2], "so do seams");
    assertTrue(above[0] > row("XPS, taped, 2 holes in the lid ")[0] && above[0] > tight[0]);
    assertTrue(both[1] > above[1] && above[1] > tight[1], "no heat without oxygen");
    assertTrue(row("EPS 20, not taped, 4 in the lid ")[0] > foam[0]);
    assertInPage(line("With all seams taped"));
    assertTrue(lines.contains(Cautions.ILLUSTRATIVE));
    assertGridWithin(0.3);
  }

  @Test
  void filmAndPouch(@TempDir Path folder) throws IOException {
    Path picture = folder.resolve("film.svg");
    run(none -> FilmAndPouch.main(new String[] {picture.toString()}));
    assertTrue(Files.readString(picture).contains("power [W]"));
    double[] free = row("40 hour warmer, film free ");
    double[] half = row("40 hour warmer, half taped over ");
    double[] over = row("40 hour warmer, taped over ");
    double[] hot = row("10 hour warmer, film free ");
    double[] cool = row("72 hour warmer, film free ");
    double[] two = row("two, 40 hour warmer, film free ");
    assertTrue(free[0] > half[0] && half[0] > over[0] && over[0] == 0, "heat needs the film");
    assertTrue(free[3] < half[3] && half[3] < over[3], "as much oxygen as heat");
    assertTrue(hot[2] > free[2] && free[2] > cool[2], "short and hot, long and cool");
    assertTrue(hot[1] < 0.1 && hot[4] < half[4], "spent after a day");
    assertTrue(two[0] > free[0] && two[1] < 2 * free[1] && two[3] < free[3], "they share the air");
    assertInPage(line("After a day"));
    assertGridWithin(0.3);
  }

  @Test
  void filledOrNot() throws IOException {
    run(FilledOrNot::main);
    double[] paper = row("shredded paper ");
    double[] newspaper = row("crumpled newspaper ");
    double[] foil = row("nothing, lined with foil ");
    double[] nothing = row("nothing  ");
    assertTrue(paper[0] > newspaper[0], "the heavier fill that conducts less holds longer");
    assertTrue(newspaper[0] > foil[0] && foil[0] > nothing[0]);
    assertTrue(paper[1] < nothing[1], "bare air passes more of the warmer's heat on");
    assertTrue(foil[2] > paper[2] && paper[2] > nothing[2], "the warmer is hot where heat stays");
    assertInPage(line("Taking out"));
    assertTrue(lines.stream().anyMatch(each -> each.startsWith("The box has no fill")));
    assertGridWithin(0.3);
  }

  @Test
  void foamOrSize() throws IOException {
    run(FoamOrSize::main);
    double[][] rows = {row("foam of 15 mm"), row("foam of 30 mm"), row("foam of 45 mm")};
    for (int foam = 0; foam < 3; foam++) {
      for (int fill = 0; fill < 3; fill++) {
        assertTrue(foam == 0 || rows[foam][2 * fill] > rows[foam - 1][2 * fill], "more foam");
        assertTrue(fill == 0 || rows[foam][2 * fill] > rows[foam][2 * fill - 2], "more fill");
      }
    }
    assertEquals(rows[0][5], rows[2][1], "the same box");
    // hand: 45 + 4 + 25 mm on each side of a cup of 110 x 80 x 60 mm
    assertEquals(0.258 * 0.228 * 0.208 * 1000, rows[2][1], 0.05);
    assertInPage(line("Each litre"));
    assertGridWithin(0.3);
  }

  @Test
  void summerPack() throws IOException {
    run(SummerPack::main);
    double[] none = row("no pack ");
    double[] one = row("paraffin on lid ");
    double[] two = row("paraffin, lid and floor ");
    double[] gel = row("gel on lid ");
    double[] gels = row("gel, lid and floor ");
    assertTrue(none[0] > one[0] && one[0] > two[0] && none[0] > gel[0] && gel[0] >= gels[0]);
    assertTrue(two[1] > 18 && gels[1] < gel[1] && gel[1] < one[1], "none colder than it melts at");
    assertTrue(two[4] < one[4] && one[4] < 100, "two packs share the heat");
    assertTrue(gel[4] < gels[4] && gels[4] <= 24, "hours");
    assertInPage(line("Most is left"));
    assertTrue(lines.contains(PackClass.SUPERCOOLING_CAUTION));
    assertGridWithin(0.3);
  }

  @Test
  void dayInTheSun() throws IOException {
    run(DayInTheSun::main);
    double[] shade = row("nothing ");
    double[] half = row("half of the lid ");
    double[] lid = row("the lid ");
    double[] all = row("lid and sides ");
    assertEquals(shade[0], shade[1], "without sun the colour does not matter");
    for (int paint = 0; paint < 2; paint++) {
      assertTrue(half[paint] > shade[paint] && lid[paint] > half[paint] && all[paint] > lid[paint]);
      // linear but for the film: half the sun, half the rise; both rounded to half a degree
      assertEquals((lid[paint] - shade[paint]) / 2, half[paint] - shade[paint], 3 * ROUNDED);
    }
    assertTrue(half[1] > half[0] && lid[1] > lid[0] && all[1] > all[0], "brown absorbs more");
    // hand: 0.60 of 940 W/m2 at noon over a film of 12.9 W/(m2 K) is 44 K above air at 25 °C
    assertEquals(25 + 44, lid[5], 4);
    assertInPage(line("Sun on the lid"));
    assertGridWithin(0.3);
  }
}
