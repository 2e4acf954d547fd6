package stenotherm.conduction;

/**
 * The cells that a source heats.
 *
 * @param port the source's port
 * @param cell indices of the cells
 * @param share part of the power that each cell gets; sums to 1
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record SourceBlock(Port.SourcePort port, int[] cell, double[] share) {}
