package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.modal.ModelFormatException;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.warmer.Warmers;

class OutlookTest {
  private static final Place HERE = new Place("here", ZoneOffset.UTC);
  private static final StudySettings MANY = new StudySettings(16, 8, 1, 2);
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(Packings.COARSE, Times.HOUR, IntegratorSettings.standard()),
          12 * Times.HOUR,
          MANY);

  /** With an iron warmer, whose power depends on the weather. */
  private static Parcel warmed() {
    return Packings.warmed(List.of(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped())));
  }

  private static Journey journey(double van, double dock, double hours) {
    return new Journey(
        LocalDateTime.of(2026, 1, 31, 20, 0),
        295,
        List.of(leg("van", van, 3), leg("dock", dock, hours)));
  }

  private static Leg leg(String name, double ambient, double hours) {
    return new Leg(
        name,
        HERE,
        hours * Times.HOUR,
        Ambient.constant(ambient),
        1,
        FaceFilms.indoors(),
        Source.assumed("made up"));
  }

  private static Outlook outlook(Journey... span) {
    return Outlook.of(warmed(), List.of(span), SETTINGS, ProgressListener.NONE);
  }

  private static final Journey USUAL = journey(284, 279, 10);

  /** Made ready for the usual journey alone, and for what lies around it: immutable. */
  private static Outlook usual;

  private static Outlook spanning;

  @BeforeAll
  static void makeReady() {
    // no constants: their threads would wait for the class that waits for them
    usual = outlook(USUAL);
    spanning = outlook(journey(285, 285, 10), journey(265, 270, 10), journey(305, 302, 10));
  }

  @Test
  void aJourneyBetweenThoseSpannedIsAsIfMadeReadyAlone() {
    StudyResult here = spanning.odds(USUAL, MANY, ProgressListener.NONE);
    StudyResult alone = usual.odds(USUAL, MANY, ProgressListener.NONE);
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      assertEquals(alone.coldMargin(share), here.coldMargin(share), 0.15);
      assertEquals(alone.hotMargin(share), here.hotMargin(share), 0.15);
    }
    assertEquals(alone.within().within(), here.within().within(), 0.03);
  }

  @Test
  void oddsCountTheFates() {
    List<Fate> fates = usual.study(USUAL).fates(MANY);
    long good = fates.stream().filter(fate -> fate.breach() > USUAL.duration()).count();
    StudyResult odds = usual.odds(USUAL, MANY, ProgressListener.NONE);
    assertEquals(odds.within().within(), (double) good / fates.size(), 1e-12);
    assertTrue(good > 0 && good < fates.size(), () -> good + " tell nothing");
  }

  @Test
  void theFirstReplicatesAreTheSameWhetherTheOthersAreRunOrNot() {
    JourneyStudy study = usual.study(USUAL);
    StudySettings few = new StudySettings(16, 2, 1, 2);
    List<Fate> all = study.fates(few);
    assertEquals(32, all.size());
    assertEquals(all, study.fates(few, 4, first -> !first.equals(all.subList(0, 8))));
    assertEquals(all.subList(0, 8), study.fates(few, 4, first -> true));
    assertThrows(InvalidInputException.class, () -> study.fates(few, 17, first -> true));
  }

  /** From so cold that nothing goes well to so mild that much does. */
  @Test
  void roughOddsAreThoseOfAllRunsOrNone() {
    List<Journey> days =
        IntStream.range(0, 8).mapToObj(day -> journey(268 + 3 * day, 268 + 3 * day, 10)).toList();
    StudySettings few = new StudySettings(16, 1, 1, 2);
    List<Departure> all = Departure.all(spanning, days, few, ProgressListener.NONE);
    List<Departure> rough = Departure.roughly(spanning, days, few, ProgressListener.NONE);
    int none = 0;
    for (int day = 0; day < days.size(); day++) {
      JourneyOdds odds = rough.get(day).odds();
      if (odds.within().within() == 0) {
        none++;
        assertEquals(1, odds.tooCold() + odds.tooHot(), 1e-12, "for want of heat, day " + day);
      } else {
        assertEquals(all.get(day), rough.get(day));
      }
    }
    assertTrue(none > 0 && none < days.size(), none + " days tell nothing");
  }

  @Test
  void otherHoursGetNoCorrectionButALargerError() {
    Journey late = USUAL.delayed(1, 4 * Times.HOUR);
    JourneyStudy study = usual.study(late);
    List<Fate> fates = study.fates(MANY);
    double coldest = fates.stream().mapToDouble(fate -> fate.cold().margin()).min().orElseThrow();
    double planned =
        usual.study(USUAL).fates(MANY).stream()
            .mapToDouble(fate -> fate.cold().margin())
            .min()
            .orElseThrow();
    assertTrue(
        coldest < planned, () -> coldest + " K after a longer night, else " + planned + " K");
  }

  /** The coldest hour comes before the delay: it differs by what counts as error alone. */
  @Test
  void whatIsNotCorrectedCountsAsError() {
    Journey coldFirst = journey(255, 296, 6);
    Outlook outlook = outlook(coldFirst);
    double[] planned = coldMargins(outlook, coldFirst);
    double[] late = coldMargins(outlook, coldFirst.delayed(1, 2 * Times.HOUR));
    double[] off =
        IntStream.range(0, planned.length).mapToDouble(n -> planned[n] - late[n]).toArray();
    double mean = Arrays.stream(off).average().orElseThrow();
    double spread =
        Math.sqrt(
            Arrays.stream(off).map(each -> (each - mean) * (each - mean)).average().orElseThrow());
    // measured: without correction or error of its own 0.008 and 0.026 K
    assertEquals(-0.07, mean, 0.03, "what finer grids would change");
    assertTrue(spread > 0.1, spread + " K");
  }

  private static double[] coldMargins(Outlook outlook, Journey journey) {
    return outlook.study(journey).fates(MANY).stream()
        .mapToDouble(fate -> fate.cold().margin())
        .toArray();
  }

  @Test
  void departuresAreSingleJourneys() {
    Journey mild = journey(288, 286, 10);
    Journey harsh = journey(270, 268, 10);
    List<Departure> days =
        Departure.all(spanning, List.of(harsh, mild), MANY, ProgressListener.NONE);
    for (Departure day : days) {
      StudyResult alone = spanning.odds(day.journey(), MANY, ProgressListener.NONE);
      assertEquals(alone.within(), day.odds().within());
      assertEquals(alone.notTooCold(), day.odds().notTooCold());
      assertEquals(alone.notTooHot(), day.odds().notTooHot());
      assertEquals(alone.enoughAir(), day.odds().enoughAir());
      assertEquals(alone.notBurnt(), day.odds().notBurnt());
    }
    assertEquals(harsh, days.get(0).journey());
    assertTrue(days.get(0).odds().within().within() < days.get(1).odds().within().within());
  }

  /** On the first of the journeys, on one like it and on one of other hours. */
  @Test
  void whatWasStoredHasTheSameBits() throws IOException {
    byte[] stored = stored(spanning);
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(stored));
    Outlook read = Outlook.read(in, spanning.parcel(), USUAL);
    assertEquals(0, in.available(), "all was read");
    Journey first = journey(285, 285, 10);
    for (Journey each : List.of(first, USUAL, USUAL.delayed(1, 4 * Times.HOUR))) {
      assertEquals(spanning.study(each).fates(MANY), read.study(each).fates(MANY));
      assertArrayEquals(spanning.nominal(each).mean("cup"), read.nominal(each).mean("cup"));
    }
    assertArrayEquals(stored, stored(read), "written again");
  }

  private static byte[] stored(Outlook outlook) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    outlook.write(new DataOutputStream(bytes));
    return bytes.toByteArray();
  }

  @Test
  void whatIsDamagedOrAnotherIsRefused() throws IOException {
    byte[] stored = stored(usual);
    Parcel other = usual.parcel().withoutWarmers();
    assertThrows(InvalidInputException.class, () -> read(stored, other));
    byte[] young = stored.clone();
    young[11]++;
    assertTrue(refused(young).contains("version"), refused(young));
    byte[] alien = stored.clone();
    alien[0]++;
    assertTrue(refused(alien).contains("magic number"), refused(alien));
    // one bit, wherever it is: in the head, in either model and in the rows
    for (int at = 20; at < stored.length; at += stored.length / 50) {
      byte[] damaged = stored.clone();
      damaged[at] ^= 4;
      assertThrows(IOException.class, () -> read(damaged, usual.parcel()));
    }
    for (int length : new int[] {0, 3, 9, 20, stored.length / 2, stored.length - 1}) {
      assertThrows(
          ModelFormatException.class,
          () -> read(Arrays.copyOf(stored, length), usual.parcel()),
          () -> length + " bytes");
    }
  }

  private static Outlook read(byte[] stored, Parcel parcel) throws IOException {
    return Outlook.read(new DataInputStream(new ByteArrayInputStream(stored)), parcel, USUAL);
  }

  private static String refused(byte[] stored) {
    return String.valueOf(
        assertThrows(ModelFormatException.class, () -> read(stored, usual.parcel())).getMessage());
  }

  @Test
  void theMiddleTheColdestAndTheHottestSpanAll() {
    Journey cold = journey(270, 268, 10);
    Journey hot = journey(300, 298, 10);
    Journey mild = journey(285, 283, 10);
    assertEquals(List.of(mild, cold, hot), Outlook.span(List.of(hot, cold, mild)));
    assertEquals(List.of(mild), Outlook.span(List.of(mild)));
    assertThrows(InvalidInputException.class, () -> Outlook.span(List.of()));
    // by the air on the way, of which the longer leg has more
    Journey longCold = journey(300, 270, 30);
    assertEquals(longCold, Outlook.span(List.of(longCold, mild, hot)).get(1));
  }
}
