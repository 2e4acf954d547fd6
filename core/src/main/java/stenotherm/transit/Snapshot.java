package stenotherm.transit;

import stenotherm.conduction.TemperatureField;

/**
 * The whole temperature field at one moment of a transit.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param time time since sealing [s]
 * @param field the field
 */
public record Snapshot(double time, TemperatureField field) {}
