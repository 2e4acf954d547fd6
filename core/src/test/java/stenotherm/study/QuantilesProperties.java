package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.NotEmpty;

class QuantilesProperties {
  private static final double WIDTH = 0.25;

  private static Quantiles of(List<Double> values) {
    Quantiles quantiles = new Quantiles(-10, 10, WIDTH);
    values.forEach(quantiles::add);
    return quantiles;
  }

  /** By the definition that the quantile of n values is the one of rank n times the share. */
  @Property(seed = "20261129")
  void areWithinOneBinOfExactOnes(
      @ForAll @NotEmpty List<@DoubleRange(min = -10, max = 9.99) Double> values,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    List<Double> sorted = values.stream().sorted().toList();
    int rank = Math.max(1, (int) Math.ceil(share * sorted.size()));
    double exact = sorted.get(rank - 1);
    assertEquals(exact, of(values).quantile(share), WIDTH);
  }

  @Property(seed = "20261130")
  void mergedAreAsAllAtOnce(
      @ForAll List<@DoubleRange(min = -12, max = 12) Double> some,
      @ForAll @NotEmpty List<@DoubleRange(min = -12, max = 12) Double> others,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Quantiles merged = of(others);
    merged.addAll(of(some));
    Quantiles atOnce = of(some);
    others.forEach(atOnce::add);
    assertEquals(atOnce.quantile(share), merged.quantile(share), 0);
    assertEquals(atOnce.count(), merged.count());
    assertEquals(atOnce.outside(), merged.outside());
  }

  @Property(seed = "20261131")
  void growWithTheShare(
      @ForAll @NotEmpty List<@DoubleRange(min = -12, max = 12) Double> values,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    Quantiles quantiles = of(values);
    double low = quantiles.quantile(Math.min(share, other));
    double high = quantiles.quantile(Math.max(share, other));
    assertTrue(low <= high, low + " > " + high);
  }
}
