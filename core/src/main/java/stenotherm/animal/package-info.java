/**
 * The animal: at which temperatures a small ectotherm is comfortable, which ones are a cause for
 * alarm, at which ones it fails within minutes, and how long a journey kept it outside each of
 * these ranges; what it breathes and how much heat it gives.
 *
 * <p>Start with {@link stenotherm.animal.Animals}, whose entries carry a {@link
 * stenotherm.animal.Tolerance}, and with {@link stenotherm.animal.Exposure}, which judges a
 * temperature history by one.
 *
 * <p>Limits: bands are common practice of keepers, critical limits are ramped laboratory tests that
 * last minutes; neither says that an animal comes through unharmed. Warm-kept and freshly fed
 * captives are the worst case for cold. Thermal dose is not part of this, and the loss of water of
 * amphibians is worth a caution, not a limit ({@link stenotherm.animal.AnimalGroup#DRYING}).
 *
 * <p>Experimental: until version 1.0 names and signatures may change with the second number of the
 * version.
 */
@NullMarked
package stenotherm.animal;

import org.jspecify.annotations.NullMarked;
