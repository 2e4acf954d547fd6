package stenotherm.modal;

import org.jspecify.annotations.Nullable;
import stenotherm.conduction.HeatNetwork;

/** A network that configurations of a model have; without its cells if the model was read. */
final class KnownNetwork {
  /** Its number within the model. */
  final int number;

  private final @Nullable HeatNetwork network;

  KnownNetwork(int number, @Nullable HeatNetwork network) {
    this.number = number;
    this.network = network;
  }

  /**
   * The network itself.
   *
   * @param purpose what needs it, for the message
   */
  HeatNetwork cells(String purpose) {
    if (network == null) {
      throw ReducedModel.withoutCells(purpose);
    }
    return network;
  }

  boolean is(HeatNetwork other) {
    return network == other;
  }

  boolean is(KnownNetwork other) {
    return this == other || (network != null && network == other.network);
  }
}
