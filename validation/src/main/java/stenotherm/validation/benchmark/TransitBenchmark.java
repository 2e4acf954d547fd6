package stenotherm.validation.benchmark;

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
import org.openjdk.jmh.annotations.Warmup;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;

/**
 * Times transits as a program that embeds the library makes them: the model of a parcel, runs of it
 * through a journey, and many runs with the model. Beside each run stands the same with every cell
 * stepped under the same coefficients. {@link ModelRuns} has what runs; {@link ModelRunsReport}
 * tells the errors.
 *
 * <p>Internal. Stateless.
 */
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xmx3g", "-XX:+UseSerialGC"})
public class TransitBenchmark {
  /** Made by JMH. */
  public TransitBenchmark() {}

  /** A journey and how it is run. */
  @State(Scope.Benchmark)
  public static class Choice {
    /** What runs. */
    @Param public ModelRuns run = ModelRuns.REFERENCE;

    private @Nullable ParcelModel model;

    /** Made by JMH. */
    public Choice() {}

    /** Builds the model. */
    @Setup(Level.Trial)
    public void make() {
      model = run.model(1);
    }

    private ParcelModel ready() {
      return Objects.requireNonNull(model);
    }
  }

  /** How many threads build and run. */
  @State(Scope.Benchmark)
  public static class Threads {
    /** The number. */
    @Param({"1", "2"})
    public int threads;

    /** Made by JMH. */
    public Threads() {}
  }

  /**
   * Builds the model for the reference journey.
   *
   * @param with how many threads
   * @return the model
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 2)
  @Measurement(iterations = 5)
  public ParcelModel build(Threads with) {
    return ModelRuns.REFERENCE.model(with.threads);
  }

  /**
   * Runs a journey with modes.
   *
   * @param choice which
   * @return the history
   */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 2)
  @Measurement(iterations = 5, time = 2)
  public TransitResult run(Choice choice) {
    return choice.run.on(choice.ready());
  }

  /**
   * Runs a journey cell by cell.
   *
   * @param choice which
   * @return the history
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 1)
  @Measurement(iterations = 2)
  public TransitResult runEveryCell(Choice choice) {
    return choice.run.everyCell(choice.ready());
  }

  /**
   * Builds a model of means and runs the reference journey at 200 ambient offsets.
   *
   * @param with how many threads
   * @return the coldest mean temperature of the animal in each run [K]
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 1)
  @Measurement(iterations = 3)
  public double[] buildAndOffsets(Threads with) {
    return ModelRuns.offsets(with.threads);
  }
}
