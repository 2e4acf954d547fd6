package stenotherm.transit;

/**
 * What coefficients depend on: temperatures at one moment, or their means over a stage.
 *
 * @param surfaces mean of each boundary's surface [K]
 * @param blocks mean of each block whose conductivity varies, in the order of {@link
 *     ParcelBody#varying} [K]
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record Temperatures(double[] surfaces, double[] blocks) {}
