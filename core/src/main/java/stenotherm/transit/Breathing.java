package stenotherm.transit;

/**
 * The air that the animals of one run breathed, at its worst.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param leastOxygen lowest mole fraction of oxygen, at altitude that of sea-level air with the
 *     same partial pressure [-]
 * @param mostCarbonDioxide highest mole fraction of carbon dioxide, likewise [-]
 * @param breach when the air of an animal first was beyond an alarm level of {@link
 *     stenotherm.air.BreathingLimits} [s]; infinite if it never was
 */
public record Breathing(double leastOxygen, double mostCarbonDioxide, double breach) {}
