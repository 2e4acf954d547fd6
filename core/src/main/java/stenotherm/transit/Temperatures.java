package stenotherm.transit;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import stenotherm.conduction.TemperatureField;

/**
 * What coefficients depend on: temperatures at one moment, or their means over a stage.
 *
 * @param surfaces mean of each boundary's surface [K]
 * @param blocks mean of each block whose conductivity depends on temperature or on how the parcel
 *     lies [K]
 * @param field the temperature everywhere, if it has been computed
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record Temperatures(
    double[] surfaces, Map<String, Double> blocks, @Nullable TemperatureField field) {}
