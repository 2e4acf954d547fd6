package stenotherm.validation.benchmark;

import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.infra.Blackhole;
import stenotherm.modal.ModalConfiguration;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;

/**
 * Times reduced models of the parcel of {@link PortJourney}: building one, finding its modes under
 * other films, and following the journey with one. {@link ModalReport} measures the same within a
 * minute or two, with errors and limits beside the times.
 *
 * <p>Internal. Stateless.
 */
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"})
public class ModalBenchmark {
  /** Made by JMH. */
  public ModalBenchmark() {}

  /** The parcel on its grid, for building. */
  @State(Scope.Benchmark)
  public static class Parcel {
    /** Number of film sets. */
    @Param({"1", "3"})
    public int filmSets;

    /** Number of threads that build. */
    @Param({"1", "2"})
    public int threads;

    /** Cell widths as parts of those of the full mesh: about 15, 30, 60 and 120 thousand cells. */
    @Param({"2.44", "1.63", "1", "0.96"})
    public double grid;

    private PortJourney journey;

    /** Made by JMH. */
    public Parcel() {
      journey = new PortJourney(ReferenceTransient.fullMesh());
    }

    /** Makes the grid. */
    @Setup(Level.Trial)
    public void make() {
      journey = new PortJourney(ReferenceTransient.fullMesh().scaled(grid));
    }
  }

  /** A model that is ready. */
  @State(Scope.Benchmark)
  public static class Model {
    private final PortJourney journey = new PortJourney(ReferenceTransient.fullMesh());
    private final ReducedModel model = journey.model(journey.filmSets().size(), 1);
    private final ReducedModel inOneAir = journey.modelInOneAir(1);
    private final double[] otherFilms = journey.otherFilms();
    private final double[][] rows = journey.rows();

    /** Made by JMH. */
    public Model() {}
  }

  /**
   * Builds a model.
   *
   * @param parcel of what
   * @return the model
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 2)
  @Measurement(iterations = 5)
  public ReducedModel build(Parcel parcel) {
    return parcel.journey.model(parcel.filmSets, parcel.threads);
  }

  /**
   * Finds the modes under films that the basis was not built for.
   *
   * @param ready the model
   * @return the configuration
   */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 2)
  @Measurement(iterations = 5, time = 2)
  public ModalConfiguration otherFilms(Model ready) {
    return ready.model.configuration(ready.otherFilms, new double[0]);
  }

  /**
   * Follows the journey with error estimates.
   *
   * @param ready the model
   * @param hole takes the outputs
   */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 2)
  @Measurement(iterations = 5, time = 2)
  public void followWithEstimates(Model ready, Blackhole hole) {
    follow(ready, ready.model.engine(ready.journey.initialState()), hole);
  }

  /**
   * Follows the journey without error estimates.
   *
   * @param ready the model
   * @param hole takes the outputs
   */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 2)
  @Measurement(iterations = 5, time = 2)
  public void follow(Model ready, Blackhole hole) {
    follow(ready, ready.model.engineWithoutEstimates(ready.journey.initialState()), hole);
  }

  /**
   * Follows the journey without error estimates, where all faces meet the same air.
   *
   * @param ready the model
   * @param hole takes the outputs
   */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 3, time = 2)
  @Measurement(iterations = 5, time = 2)
  public void followInOneAir(Model ready, Blackhole hole) {
    follow(ready, ready.inOneAir.engineWithoutEstimates(ready.journey.initialState()), hole);
  }

  private static void follow(Model ready, ModalEngine engine, Blackhole hole) {
    ready.journey.follow(engine, ready.rows);
    hole.consume(ready.rows);
  }
}
