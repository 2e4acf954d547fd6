package stenotherm.transit;

import java.util.function.Supplier;
import stenotherm.conduction.TemperatureField;

/**
 * A moment of a transit; its temperature field is made on request.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Snapshot {
  private final double time;
  private final Supplier<TemperatureField> maker;

  Snapshot(double time, Supplier<TemperatureField> maker) {
    this.time = time;
    this.maker = maker;
  }

  /**
   * Returns the moment.
   *
   * @return time since sealing [s]
   */
  public double time() {
    return time;
  }

  /**
   * Makes the field: from the modes in milliseconds; where every cell was stepped, by going through
   * the journey once more until this moment.
   *
   * @return the field, made anew by each call
   * @throws IllegalStateException if the model was read without its cells
   * @throws java.util.concurrent.CancellationException if an interrupt stopped it
   */
  public TemperatureField field() {
    return maker.get();
  }
}
