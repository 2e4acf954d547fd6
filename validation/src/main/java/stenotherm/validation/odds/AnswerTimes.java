package stenotherm.validation.odds;

import com.sun.management.GarbageCollectionNotificationInfo;
import com.sun.management.GcInfo;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;
import stenotherm.base.ProgressListener;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.report.Comparison;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Takes the time of what people wait for: all verdicts of a scenario with the report, and many
 * journeys of one packing, beside runs of the full grid. All of it twice: the difference is the
 * noise of the machine and, in the first time, what a new JVM has to load and to compile.
 *
 * <p>Internal. Not thread-safe: it measures the whole JVM.
 */
public final class AnswerTimes {
  private static final int THREADS = 2;
  private static final int REPEATS = 2;
  private static final int FULL_RUNS = 2;

  /** 10,240 journeys. */
  private static final StudySettings JOURNEYS = new StudySettings(20, 512, 8, THREADS);

  private static final String TEMPLATE = "overnight by air, 30 to 45 °F";
  private static final double MEGA = 1e-6;

  private final PrintStream out;

  // since the JVM started [bytes]
  private long allocatedUntilCollection;
  private long heldAfterCollection;

  private AnswerTimes(PrintStream out) {
    this.out = out;
    for (GarbageCollectorMXBean each : ManagementFactory.getGarbageCollectorMXBeans()) {
      ((NotificationEmitter) each)
          .addNotificationListener(
              (told, nothing) ->
                  collected(
                      GarbageCollectionNotificationInfo.from((CompositeData) told.getUserData())
                          .getGcInfo()),
              null,
              null);
    }
  }

  /**
   * Prints the times.
   *
   * @param out where to
   * @param files scenario files
   * @throws IOException if a file cannot be read
   */
  public static void print(PrintStream out, List<Path> files) throws IOException {
    List<Scenario> scenarios = new ArrayList<>();
    for (Path file : files) {
      scenarios.add(ScenarioReader.read(file));
    }
    String oneBox = UsualPackings.scenario("leopard gecko, 40 g", TEMPLATE, UsualPackings.CUBE);
    Scenario template = ScenarioReader.read(TEMPLATE, oneBox);
    scenarios.add(template);
    AnswerTimes times = new AnswerTimes(out);
    out.println("    wall s  processor s  allocated MB");
    for (int repeat = 0; repeat < REPEATS; repeat++) {
      for (Scenario scenario : scenarios) {
        times.take(scenario.title(), () -> compare(scenario));
      }
      times.journeys(template.packings().get(0), template.journey());
    }
  }

  /** All verdicts, pictures and files. */
  private static void compare(Scenario scenario) {
    Comparison.run(scenario, TransitSettings.standard(), THREADS, ProgressListener.NONE::progress)
        .files(true);
  }

  private void journeys(Parcel parcel, Journey journey) {
    AssessmentSettings settings = AssessmentSettings.standard();
    JourneyStudy[] study = new JourneyStudy[1];
    StudyResult[] result = new StudyResult[1];
    take(
        "  preparing its journeys",
        () -> study[0] = new Assessor(parcel, journey, settings).study(ProgressListener.NONE));
    double before = heldAfterCollecting();
    take(
        String.format(Locale.ROOT, "  %,d of them", JOURNEYS.journeys()),
        () -> result[0] = study[0].run(JOURNEYS, ProgressListener.NONE));
    out.printf(
        Locale.ROOT,
        "%38s heap in use %.1f MB before, %.1f MB with the result; odds %.3f%n",
        "",
        before,
        heldAfterCollecting(),
        result[0].within().within());
    Journey held = journey.held(settings.longestHold());
    ParcelModel full = ParcelModel.of(parcel, held, TransitSettings.standard().full());
    List<Variation> varied =
        Uncertainties.of(parcel, held, Uncertainties.Ranges.stated(0))
            .spread(FULL_RUNS, JOURNEYS.seed());
    double each =
        take(
                "  " + FULL_RUNS + " of the full grid, on one thread",
                () -> varied.forEach(one -> full.journeyMeans(held, one)))
            / FULL_RUNS;
    out.printf(
        Locale.ROOT,
        "%38s so %,d of these would take %.1f processor hours (scaled up)%n",
        "",
        JOURNEYS.journeys(),
        each * JOURNEYS.journeys() / 3600);
  }

  /** Does something and prints what it took; its processor time [s]. */
  private double take(String name, Runnable work) {
    long allocated = allocated();
    double processor = OddsAgreement.processorSeconds();
    long start = System.nanoTime();
    work.run();
    double wall = (System.nanoTime() - start) * 1e-9;
    double taken = OddsAgreement.processorSeconds() - processor;
    out.printf(
        Locale.ROOT,
        "%10.2f %12.2f %13.0f  %s%n",
        wall,
        taken,
        (allocated() - allocated) * MEGA,
        name);
    return taken;
  }

  private static double heldAfterCollecting() {
    System.gc();
    return held() * MEGA;
  }

  private static long held() {
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  private synchronized long allocated() {
    return allocatedUntilCollection + held() - heldAfterCollection;
  }

  private synchronized void collected(GcInfo collection) {
    allocatedUntilCollection += sum(collection.getMemoryUsageBeforeGc()) - heldAfterCollection;
    heldAfterCollection = sum(collection.getMemoryUsageAfterGc());
  }

  /** Bytes in use in all parts of the heap. */
  private static long sum(Map<String, MemoryUsage> parts) {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(part -> part.getType() == MemoryType.HEAP)
        .map(part -> parts.get(part.getName()))
        .filter(Objects::nonNull)
        .mapToLong(MemoryUsage::getUsed)
        .sum();
  }
}
