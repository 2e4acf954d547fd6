package stenotherm.warmer;

/**
 * How a warmer comes by its heat.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface HeatRelease permits IronPowder, PrescribedPower, ControlledPower {}
