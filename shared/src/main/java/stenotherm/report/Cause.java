package stenotherm.report;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import stenotherm.study.Odds;
import stenotherm.study.OddsByCause;

/** What journeys fail of. */
enum Cause {
  COLD("too cold", OddsByCause::notTooCold, true),
  HEAT("too hot", OddsByCause::notTooHot, true),
  AIR("short of air", OddsByCause::enoughAir, false),
  BURNS("could be burnt", OddsByCause::notBurnt, false);

  private final String words;
  private final Function<OddsByCause, Odds> spared;
  private final boolean isAlwaysTold;

  Cause(String words, Function<OddsByCause, Odds> spared, boolean isAlwaysTold) {
    this.words = words;
    this.spared = spared;
    this.isAlwaysTold = isAlwaysTold;
  }

  String words() {
    return words;
  }

  /** Part of the journeys that fail of it. */
  double share(OddsByCause odds) {
    return 1 - spared.apply(odds).within();
  }

  /** Those that a table of some odds tells of: cold and heat, others where they happen. */
  static List<Cause> of(Collection<OddsByCause> all) {
    return Arrays.stream(values())
        .filter(cause -> cause.isAlwaysTold || all.stream().anyMatch(odds -> cause.share(odds) > 0))
        .toList();
  }
}
