package stenotherm.validation.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.TransientSolution;

/**
 * Times the journey of {@link ReferenceTransient} at the standard step tolerance, from the blocks
 * to the last stored time, in a heap of 300 MB. No warm-up: a program that runs one journey has
 * none either.
 *
 * <p>Internal. Stateless.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(
    value = 3,
    jvmArgs = {"-Xmx300m", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 2)
public class FullSolverBenchmark {
  /** Made by JMH. */
  public FullSolverBenchmark() {}

  /**
   * One run.
   *
   * @return the history
   */
  @Benchmark
  public TransientSolution journey() {
    return new ReferenceTransient(ReferenceTransient.fullMesh()).run(IntegratorSettings.standard());
  }
}
