/**
 * The passenger: which temperatures a small ectotherm is comfortable at, which ones are a cause for
 * alarm, which ones are the end of it, and how long a journey kept it where.
 *
 * <p>Start with {@link stenotherm.animal.Animals}, whose entries carry a {@link
 * stenotherm.animal.Tolerance}, and with {@link stenotherm.animal.Exposure}, which judges a
 * temperature history by one.
 *
 * <p>Limits: bands are common practice of keepers, critical limits are ramped laboratory tests that
 * last minutes; neither says that an animal comes through unharmed. Warm-kept and freshly fed
 * captives are the worst case for cold. Thermal dose, metabolism and water loss are not part of
 * this.
 *
 * <p>Experimental: until version 1.0 names and signatures may change with any release.
 */
@NullMarked
package stenotherm.animal;

import org.jspecify.annotations.NullMarked;
