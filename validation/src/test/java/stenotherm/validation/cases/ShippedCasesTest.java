package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.validation.studies.Study;

/** The cases that come with the program, on coarse grids; the command runs them in full. */
class ShippedCasesTest {
  /** So long that no machine is too slow. */
  private static final double HOUR = 3600;

  /** Far below what a full run takes; three grids fit for every case. */
  private static final Limits COARSE = new Limits(250_000, 1L << 29, HOUR);

  static Stream<CaseSource> cases() throws IOException {
    return CaseSources.bundled().stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void valuesLieWithinTheirTolerance(CaseSource source) {
    CaseResult result = source.run(COARSE, 0, line -> {});
    assertTrue(result.grids().size() >= 3, () -> source.name() + ": " + result.problem());
    for (ValueResult value : result.values()) {
      // a coarse grid may not have converged; its error must then be what it says it may be
      double allowed =
          value.reference().expected().tolerance()
              + (value.isConverged() ? 0 : value.accuracy().estimate());
      assertTrue(Math.abs(value.error()) <= allowed, () -> source.name() + ": " + value);
      assertEquals(Optional.empty(), value.concern());
    }
  }

  @Test
  void eachSaysWhatItIsAndWhyItsTolerancesAreWhatTheyAre() throws IOException {
    Set<String> ids = new HashSet<>();
    for (CaseSource source : CaseSources.bundled()) {
      CaseFile file = CaseReader.read(source.reader().read());
      assertTrue(ids.add(file.id()), file.id());
      Study.Kind kind =
          source.name().startsWith("verification/")
              ? Study.Kind.VERIFICATION
              : Study.Kind.BENCHMARK;
      assertEquals(kind, file.heading().kind(), source.name());
      for (Reference reference : file.references()) {
        assertTrue(!reference.why().isEmpty(), source.name());
      }
    }
  }

  @Test
  void theIndexListsEveryFile() throws IOException, URISyntaxException {
    Path folder =
        Path.of(Objects.requireNonNull(CaseSources.class.getResource("index.txt")).toURI())
            .getParent();
    List<String> files;
    try (Stream<Path> all = Files.walk(Objects.requireNonNull(folder))) {
      files =
          all.filter(file -> file.toString().endsWith(".yaml"))
              .map(file -> folder.relativize(file).toString().replace('\\', '/'))
              .sorted()
              .toList();
    }
    assertEquals(files, CaseSources.bundled().stream().map(CaseSource::name).sorted().toList());
  }
}
