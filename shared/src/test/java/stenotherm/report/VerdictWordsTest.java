package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import stenotherm.base.Times;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.decision.Assessment;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Level;
import stenotherm.decision.Margin;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.words.Figures;

/** Sentences of verdicts whose numbers are made up, on a journey through two time zones. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class VerdictWordsTest {
  private static final String SCENARIO =
      """
      format: 1
      title: test
      animal: leopard gecko, 40 g
      containers: [110 x 80 x 60 mm]
      journey:
        sealed: 2026-01-31 20:00
        from: Here, UTC-5
        to: There, UTC-8
        legs:
          - {name: cold truck, at: origin, for: 5 h, ambient: 5 °C, orientation: right up}
          - {name: hot depot, at: destination, for: 13 h, ambient: 20 °C}
      packings:
        - {name: bare foam, box: 350 x 250 x 150 mm, foam: EPS 20 13 mm, fill: shredded paper}
      """;

  private TransitResult one;
  private TransitResult two;

  @BeforeAll
  void run() {
    one = run(SCENARIO);
    two = run(SCENARIO.replace("60 mm]", "60 mm, 110 x 80 x 60 mm]"));
  }

  private static TransitResult run(String text) {
    Scenario scenario = ScenarioReader.read("test.yaml", text);
    return Transit.run(
        scenario.packings().get(0),
        scenario.journey(),
        Variation.NOMINAL,
        TransitSettings.standard().meshScaled(4));
  }

  private static Assessment assessment(TransitResult run, Margin tightest) {
    DiscretisationEstimate grid =
        DiscretisationEstimate.of(new double[] {1, 1, 1}, new double[] {4, 2, 1});
    Verdict verdict = new Verdict(Level.TIGHT, tightest, 1.25, 2, List.of(Verdict.DEFER));
    return new Assessment(
        run, run, run, List.of(), 18, List.of(), grid, grid, new DelayMargin.AtLeast(1), verdict);
  }

  private String sentence(Side side, double kelvin, double hours, Figures figures) {
    Margin tightest = new Margin(side, "cup", kelvin, 290, Times.fromHours(hours));
    return new VerdictWords(figures).sentence(assessment(one, tightest));
  }

  @Test
  void tellsHowMuchIsLeftAndWhenOnTheClockOfTheLeg() {
    // 20:00 in the east, 18 hours on, three hours back
    assertEquals(
        "The hot side is tightest: in the worst case 0.5 K (0.9 F°) left at 11:00 on 1 February"
            + " (18.0 h after sealing), hot depot; nominal 1.2 K (2.2 F°), at best 2.0 K (3.6 F°).",
        sentence(Side.HOT, 0.5, 18, Figures.METRIC));
  }

  /** What is stored at a change of legs is of the one that ends, though the next begins then. */
  @Test
  void namesTheLegThatEndsAndHowTheParcelLies() {
    assertEquals(
        "The cold side is tightest: in the worst case 3.0 K (5.4 F°) outside the alarm band at"
            + " 01:00 on 1 February (5.0 h after sealing), cold truck, on its side, right face"
            + " up; nominal 1.2 K (2.2 F°), at"
            + " best 2.0 K (3.6 F°).",
        sentence(Side.COLD, -3, 5, Figures.METRIC));
  }

  @Test
  void hasTheReadersUnits() {
    assertEquals(
        "The hot side is tightest: in the worst case 0.9 F° (0.5 K) left at 22:00 on 31 January"
            + " (2.0 h after sealing), cold truck, on its side, right face up; nominal 2.2 F°"
            + " (1.2 K), at best 3.6 F°"
            + " (2.0 K).",
        sentence(Side.HOT, 0.5, 2, Figures.US));
  }

  @Test
  void namesTheCupWhereThereAreSeveral() {
    Margin tightest = new Margin(Side.COLD, "container 2", 1, 290, Times.fromHours(18));
    assertEquals(
        "The cold side is tightest, in 'container 2': in the worst case 1.0 K (1.8 F°) left at"
            + " 11:00 on 1 February (18.0 h after sealing), hot depot; nominal 1.2 K (2.2 F°), at"
            + " best 2.0 K (3.6 F°).",
        new VerdictWords(Figures.METRIC).sentence(assessment(two, tightest)));
  }
}
