package stenotherm.fleet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stenotherm.base.ProgressListener;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Outlook;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.report.Cautions;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.TransitSettings;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

/**
 * The packings of a scenario, ready for any recorded day, in a form that goes to other machines.
 * Each Java machine reads it once, when the first of its tasks asks. Thread-safe.
 */
final class ReadyPackings implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final String text;

  /** The packings in their order, as {@link Outlook#write} stores them. */
  private final byte[][] stored;

  private final String[] cautions;

  private transient @Nullable Packings read;

  private ReadyPackings(String file, String text, byte[][] stored, Set<String> cautions) {
    this.file = file;
    this.text = text;
    this.stored = stored;
    this.cautions = cautions.toArray(new String[0]);
  }

  /**
   * A scenario with its packings.
   *
   * @param scenario the scenario
   * @param outlooks its packings, ready for odds
   */
  record Packings(Scenario scenario, List<Outlook> outlooks) {}

  /**
   * Makes the packings of a scenario ready for whatever was recorded, between any two places: what
   * a lane gets does not depend on which others are asked for.
   *
   * @param file name of the scenario file
   * @param text what is in it
   * @param settings mesh, time steps and threads; the result is the same for any number of these
   * @throws IllegalStateException if a run failed
   */
  static ReadyPackings of(String file, String text, TransitSettings settings) {
    Scenario scenario = ScenarioReader.read(file, text);
    List<Journey> span = span(scenario);
    byte[][] stored = new byte[scenario.packings().size()][];
    Set<String> cautions = new LinkedHashSet<>();
    for (int number = 0; number < stored.length; number++) {
      Parcel packing = scenario.packings().get(number);
      Outlook outlook = outlook(scenario, packing, span, settings);
      List<String> ofRuns = new ArrayList<>();
      span.forEach(journey -> ofRuns.addAll(outlook.nominal(journey).cautions()));
      cautions.addAll(Cautions.of(scenario, packing, ofRuns));
      stored[number] = bytes(outlook);
    }
    return new ReadyPackings(file, text, stored, cautions);
  }

  static Outlook outlook(
      Scenario scenario, Parcel packing, List<Journey> span, TransitSettings settings) {
    return Outlook.of(
        packing,
        span,
        new AssessmentSettings(settings, scenario.longestHold()),
        ProgressListener.NONE);
  }

  /**
   * The middle one, the coldest and the hottest of all recorded days with the weather of one place
   * at both ends: what lies between two places lies between these.
   */
  static List<Journey> span(Scenario scenario) {
    RecordedWeather weather = RecordedWeather.bundled();
    List<Journey> all = new ArrayList<>();
    for (String place : weather.places()) {
      List<DayExtremes> days = weather.days(place);
      all.addAll(scenario.plan().onRecordedDays(days, days, day -> true));
    }
    return Outlook.span(all);
  }

  private static byte[] bytes(Outlook outlook) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      outlook.write(new DataOutputStream(bytes));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /** The packings, read at the first call. */
  synchronized Packings packings() {
    Packings known = read;
    if (known == null) {
      Scenario scenario = ScenarioReader.read(file, text);
      List<Outlook> outlooks = new ArrayList<>();
      for (int number = 0; number < stored.length; number++) {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(stored[number]));
        try {
          outlooks.add(Outlook.read(in, scenario.packings().get(number), scenario.journey()));
        } catch (IOException damaged) {
          throw new UncheckedIOException(damaged);
        }
      }
      known = new Packings(scenario, List.copyOf(outlooks));
      read = known;
    }
    return known;
  }

  /** What must be said beside the odds, each once. */
  List<String> cautions() {
    return List.of(cautions);
  }

  /** Size of all that is stored [bytes]. */
  long size() {
    long size = 0;
    for (byte[] each : stored) {
      size += each.length;
    }
    return size;
  }

  /** Takes all that odds depend on into a fingerprint. */
  void addTo(MessageDigest fingerprint) {
    fingerprint.update(text.getBytes(StandardCharsets.UTF_8));
    for (byte[] each : stored) {
      fingerprint.update(each);
    }
  }
}
