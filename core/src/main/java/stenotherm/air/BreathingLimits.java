package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * How little oxygen and how much carbon dioxide an animal's air may have. Between warning and alarm
 * nothing is promised: kinds of animals differ, and few were ever measured.
 *
 * <p>A value, thus thread-safe.
 *
 * @param oxygenWarning mole fraction of oxygen below which a warning is due [-]
 * @param oxygenAlarm mole fraction of oxygen that counts as a breach [-], below the warning
 * @param oxygenCritical mole fraction of oxygen that must be taken for deadly [-], below the alarm
 * @param oxygenSource where the levels of oxygen come from
 * @param carbonDioxideWarning mole fraction of carbon dioxide above which a warning is due [-]
 * @param carbonDioxideAlarm mole fraction of carbon dioxide that counts as a breach [-], above the
 *     warning
 * @param carbonDioxideSource where the levels of carbon dioxide come from
 */
public record BreathingLimits(
    double oxygenWarning,
    double oxygenAlarm,
    double oxygenCritical,
    Source oxygenSource,
    double carbonDioxideWarning,
    double carbonDioxideAlarm,
    Source carbonDioxideSource) {
  /**
   * Levels for small ectotherms. At altitude they hold for the partial pressure over 101 325 Pa.
   */
  public static final BreathingLimits ECTOTHERMS =
      new BreathingLimits(
          0.15,
          0.12,
          0.10,
          Source.assumed(
              "oxygen levels for small ectotherms, as partial pressures over that of the sea-level"
                  + " atmosphere: a pressurised hold in flight has 15.6 % with nothing used; at 12 %"
                  + " for a week a highland lizard kept its temperature, at 8 % and 6 % it chose"
                  + " lower ones within a day (He et al. 2013, abstract)"),
          0.01,
          0.03,
          Source.assumed(
              "carbon dioxide levels for small ectotherms, no measurement found for them; crowded"
                  + " cages of mice reach 2 % to 8 % (Krohn and Hansen 2002, abstract)"));

  /**
   * Checks the levels.
   *
   * @throws InvalidInputException if a level is no fraction or the levels are in the wrong order
   */
  public BreathingLimits {
    Range fraction = new Range(0, 1);
    String hint = "Levels are mole fractions: 15 % are 0.15.";
    Checks.within("oxygen warning", oxygenWarning, fraction, "", hint);
    Checks.within("oxygen alarm", oxygenAlarm, new Range(0, oxygenWarning), "", hint);
    Checks.within("oxygen critical", oxygenCritical, new Range(0, oxygenAlarm), "", hint);
    Checks.given("source of oxygen levels", oxygenSource);
    Checks.within("carbon dioxide alarm", carbonDioxideAlarm, fraction, "", hint);
    Checks.within(
        "carbon dioxide warning", carbonDioxideWarning, new Range(0, carbonDioxideAlarm), "", hint);
    Checks.given("source of carbon dioxide levels", carbonDioxideSource);
  }
}
