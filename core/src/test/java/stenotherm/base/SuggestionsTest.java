package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuggestionsTest {
  private static final List<String> ANIMALS = List.of("leopard gecko", "corn snake", "frog");

  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "parcel, parcel, 0",
    "parcel, pacrel, 1",
    "parcel, '', 6",
    "'', ice, 3",
    // Editing the swapped pair again would make it 2; the restricted form does not.
    "ca, abc, 3"
  })
  void distanceCountsEditsAndSwaps(String first, String second, int edits) {
    assertEquals(edits, Suggestions.distance(first, second));
  }

  @ParameterizedTest
  @CsvSource({
    "leopard geko, leopard gecko",
    "LEOPARD GECKO, leopard gecko",
    "' cron snake ', corn snake",
    "forg, frog"
  })
  void offersTheClosestName(String given, String expected) {
    assertEquals(Optional.of(expected), Suggestions.closest(given, ANIMALS));
  }

  @ParameterizedTest
  @CsvSource({"elephant", "fish", "''"})
  void offersNothingThatIsFarOff(String given) {
    assertEquals(Optional.empty(), Suggestions.closest(given, ANIMALS));
  }

  @Test
  void firstOfEquallyCloseNamesWins() {
    assertEquals(Optional.of("EPS 15"), Suggestions.closest("EPS 1", List.of("EPS 15", "EPS 10")));
  }

  @Test
  void messageOffersOneNameOrListsAll() {
    assertEquals(
        "animal: there is no \"corn snak\". Did you mean \"corn snake\"?",
        Suggestions.unknown("animal", "corn snak", ANIMALS).getMessage());
    assertEquals(
        "animal: there is no \"whale\". Known: leopard gecko, corn snake, frog.",
        Suggestions.unknown("animal", "whale", ANIMALS).getMessage());
  }

  @Test
  void findIgnoresCaseAndBlanks() {
    assertEquals(
        "corn snake", Suggestions.find("animal", " Corn Snake", ANIMALS, animal -> animal));
    assertThrows(
        InvalidInputException.class,
        () -> Suggestions.find("animal", "corn", ANIMALS, animal -> animal));
  }
}
