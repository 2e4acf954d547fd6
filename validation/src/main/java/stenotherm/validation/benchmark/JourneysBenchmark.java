package stenotherm.validation.benchmark;

import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import stenotherm.base.ProgressListener;
import stenotherm.base.Times;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.scenario.Scenario;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;

/**
 * Times 640 and 10,240 journeys of the parcel of {@link ReferenceJourney}, every uncertain quantity
 * varied, as verdicts run them, and prints the bytes held before and with the result: they must not
 * depend on the number of journeys. Preparing the study is timed beside it.
 *
 * <p>Internal. Stateless.
 */
@OutputTimeUnit(TimeUnit.SECONDS)
@BenchmarkMode(Mode.SingleShotTime)
@Fork(
    value = 1,
    // each collection compacts, or what is dead would count as held
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC", "-XX:MarkSweepAlwaysCompactCount=1"})
public class JourneysBenchmark {
  private static final int REPLICATES = 20;

  /** Made by JMH. */
  public JourneysBenchmark() {}

  private static JourneyStudy prepare(int threads) {
    Scenario scenario = ReferenceJourney.scenario();
    return new Assessor(
            scenario.packings().get(0),
            scenario.journey(),
            new AssessmentSettings(TransitSettings.standard().withThreads(threads), Times.HOUR))
        .study(ProgressListener.NONE);
  }

  /** How many threads. */
  @State(Scope.Benchmark)
  public static class ThreadCount {
    /** The number. */
    @Param({"1", "2"})
    public int threads;

    /** Made by JMH. */
    public ThreadCount() {}
  }

  /** A study and what came of it. */
  @State(Scope.Benchmark)
  public static class Prepared {
    /** Points of each replicate. */
    @Param({"32", "512"})
    public int points;

    private @Nullable JourneyStudy study;
    private @Nullable StudyResult result;
    private long before;

    /** Made by JMH. */
    public Prepared() {}

    /** Prepares the study. */
    @Setup(Level.Trial)
    public void make() {
      study = prepare(2);
    }

    /** Forgets the result of the run before. */
    @Setup(Level.Iteration)
    public void clear() {
      result = null;
      before = bytesHeld();
    }

    /** Prints what is held. */
    @TearDown(Level.Iteration)
    public void tell() {
      long with = bytesHeld();
      System.out.printf(
          Locale.ROOT,
          "%,d journeys, heap in use: %.1f MB before, %.1f MB with the result%n",
          Objects.requireNonNull(result).journeys(),
          before * 1e-6,
          with * 1e-6);
    }

    private static long bytesHeld() {
      System.gc();
      Runtime runtime = Runtime.getRuntime();
      return runtime.totalMemory() - runtime.freeMemory();
    }
  }

  /**
   * Builds the models and condenses one.
   *
   * @param with how many threads
   * @return the study
   */
  @Benchmark
  @Warmup(iterations = 1)
  @Measurement(iterations = 3)
  public JourneyStudy prepareStudy(ThreadCount with) {
    return prepare(with.threads);
  }

  /**
   * Runs the journeys.
   *
   * @param with how many threads
   * @param of the study
   * @return the odds
   */
  @Benchmark
  @Warmup(iterations = 1)
  @Measurement(iterations = 2)
  public StudyResult runJourneys(ThreadCount with, Prepared of) {
    StudyResult result =
        Objects.requireNonNull(of.study)
            .run(new StudySettings(REPLICATES, of.points, 1, with.threads), ProgressListener.NONE);
    of.result = result;
    return result;
  }
}
