package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
    assertEquals(Optional.of("mouse"), Suggestions.closest("mose", List.of("mouse", "moose")));
  }

  @Test
  void numbersAreNoTypingErrors() {
    List<String> warmers = List.of("10 hour warmer", "40 hour warmer");
    assertEquals(Optional.empty(), Suggestions.closest("72 hour warmer", warmers));
    assertEquals(Optional.empty(), Suggestions.closest("41 hour warmer", warmers));
    assertEquals(Optional.of("40 hour warmer"), Suggestions.closest("40 our warmer", warmers));
    assertEquals(Optional.of("EPS 20"), Suggestions.closest("EPS20", List.of("EPS 15", "EPS 20")));
  }

  @Test
  void placesFarApartAreNotOffered() {
    List<String> places = List.of("New York", "Seattle");
    assertEquals(Optional.empty(), Suggestions.closest("Chicago", places));
    assertEquals(Optional.of("New York"), Suggestions.closest("New Yrok", places));
  }

  @Test
  void aNameThatHoldsTheWordComesBeforeOneThatLooksLikeIt() {
    List<String> materials = List.of("PIR", "still air", "wood wool", "wool felt");
    assertEquals(Optional.of("still air"), Suggestions.closest("air", materials));
    assertEquals(Optional.empty(), Suggestions.closest("wool", materials));
  }

  @Test
  void ofALongListTheLikeliestFewAreShown() {
    List<String> cups = IntStream.range(0, 40).mapToObj(size -> "cup " + size).toList();
    List<String> known = Stream.concat(cups.stream(), Stream.of("jar", "paper bag")).toList();
    assertEquals(
        "container: there is no \"sack of cloth or paper\". Closest of the 42 known: jar, paper"
            + " bag.",
        assertThrows(
                InvalidInputException.class,
                () ->
                    Suggestions.find(
                        "container",
                        "sack of cloth or paper",
                        known,
                        name -> name,
                        List.of(new Suggestions.OtherWord("sack", List.of("jar", "no such")))))
            .getMessage());
  }

  @Test
  void allThatAWordStandsForIsShown() {
    List<String> geckos = IntStream.range(0, 9).mapToObj(each -> "gecko " + each).toList();
    List<String> known =
        Stream.concat(IntStream.range(0, 30).mapToObj(each -> "frog " + each), geckos.stream())
            .toList();
    String message =
        assertThrows(
                InvalidInputException.class,
                () ->
                    Suggestions.find(
                        "animal",
                        "flying gekko",
                        known,
                        name -> name,
                        List.of(new Suggestions.OtherWord("gekk", geckos))))
            .getMessage();
    assertTrue(message.endsWith(": " + String.join(", ", geckos) + "."), message);
  }

  @Test
  void whatIsUnlikeAllOfALongListIsOfferedNothing() {
    List<String> known = IntStream.range(0, 30).mapToObj(number -> "python " + number).toList();
    assertEquals(
        "animal: there is no \"axolotl\". None of the 30 known names is like it.",
        Suggestions.unknown("animal", "axolotl", known).getMessage());
  }

  @Test
  void longNamesAreCutBeforeTheyAreCompared() {
    String message = Suggestions.unknown("animal", "x".repeat(900_000), ANIMALS).getMessage();
    assertTrue(message.startsWith("animal: there is no \"xxx"), message);
    assertTrue(message.length() < 150, message);
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
