package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;

class SuggestionsProperties {
  @Property(seed = "20260101")
  void distanceIsSymmetric(
      @ForAll @CharRange(from = 'a', to = 'd') @StringLength(max = 8) String first,
      @ForAll @CharRange(from = 'a', to = 'd') @StringLength(max = 8) String second) {
    assertEquals(Suggestions.distance(first, second), Suggestions.distance(second, first));
  }

  @Property(seed = "20260102")
  void distanceIsZeroForEqualTextsOnly(
      @ForAll @CharRange(from = 'a', to = 'c') @StringLength(max = 5) String first,
      @ForAll @CharRange(from = 'a', to = 'c') @StringLength(max = 5) String second) {
    assertEquals(first.equals(second), Suggestions.distance(first, second) == 0);
  }

  @Property(seed = "20260103")
  void distanceLiesBetweenTheDifferenceAndTheMaximumOfTheLengths(
      @ForAll @StringLength(max = 8) String first, @ForAll @StringLength(max = 8) String second) {
    int edits = Suggestions.distance(first, second);
    assertTrue(edits >= Math.abs(first.length() - second.length()));
    assertTrue(edits <= Math.max(first.length(), second.length()));
  }

  @Property(seed = "20260104")
  void aKnownNameIsItsOwnClosest(
      @ForAll @CharRange(from = 'a', to = 'z') @StringLength(min = 1, max = 12) String name) {
    assertEquals(Optional.of(name), Suggestions.closest(name, List.of("another name", name)));
  }
}
