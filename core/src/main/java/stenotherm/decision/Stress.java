package stenotherm.decision;

import stenotherm.transit.Variation;

/**
 * A run with every quantity at the end that is worse for one side, all at once: a figure of stress,
 * not the verdict.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param variation the worse ends
 * @param kelvin the smallest margin to the alarm band on that side until the planned opening, over
 *     all animals [K]; negative if its end was passed
 */
public record Stress(Variation variation, double kelvin) {}
