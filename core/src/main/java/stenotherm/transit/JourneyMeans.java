package stenotherm.transit;

/**
 * What a judgement takes from one run.
 *
 * <p>Experimental. Not copied: whoever asked for it owns the array.
 *
 * @param temperatures mean temperature of each animal [K]: a row for each occupied cup, a column
 *     for each stored time
 * @param breathing the air that they breathed
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, for thousands of runs
public record JourneyMeans(double[][] temperatures, Breathing breathing) {}
