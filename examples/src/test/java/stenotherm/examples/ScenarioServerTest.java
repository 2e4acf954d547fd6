package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import stenotherm.grid.GridBudget;
import stenotherm.transit.TransitSettings;

class ScenarioServerTest {
  private static final int REQUESTS = 1000;
  private static final int BYTES = 4000;

  /** Mild enough to hold, so that no changes are tried. */
  private static final String SMALL =
      Small.SCENARIO
          .replaceAll("  - \\{name: 'warm[^\n]*\n", "")
          .replace("hold: 3 h", "hold: 1 h")
          .replaceAll("ambient: 1[24] °C", "ambient: 24 °C");

  private final HttpClient client = HttpClient.newHttpClient();

  /** A request and what must come of it. */
  private record Case(String method, String path, String body, int status) {}

  private static final List<Case> MALFORMED =
      List.of(
          new Case("POST", "/compare", "", 400),
          new Case("POST", "/compare", "format: 1\n", 400),
          new Case("POST", "/compare", SMALL.replace("animal", "anmal"), 400),
          new Case("POST", "/compare", "[{]", 400),
          new Case("POST", "/compare", "\u0000\u0001\u0002", 400),
          new Case("POST", "/compare", "#".repeat(BYTES + 1), 413),
          new Case(
              "POST",
              "/compare",
              SMALL.replace("box: 200 x 170 x 150", "box: 1900 x 1800 x 1700"),
              422),
          new Case("GET", "/compare", "", 405),
          new Case("POST", "/", SMALL, 404));

  private static ScenarioServer server(Duration time, double meshScale) throws Exception {
    TransitSettings coarse = TransitSettings.standard().meshScaled(meshScale);
    TransitSettings settings =
        new TransitSettings(
            coarse.mesh().within(GridBudget.standard().withCells(20_000)),
            coarse.interval(),
            coarse.stepping());
    return new ScenarioServer(0, new ScenarioServer.Limits(1, 4, time, BYTES, settings));
  }

  private HttpResponse<String> send(ScenarioServer server, Case each) throws Exception {
    URI uri = URI.create("http://localhost:" + server.port() + each.path());
    HttpRequest request =
        HttpRequest.newBuilder(uri)
            .timeout(Duration.ofMinutes(3))
            .method(each.method(), BodyPublishers.ofString(each.body()))
            .build();
    return client.send(request, BodyHandlers.ofString());
  }

  private static long usedMemory() throws InterruptedException {
    for (int round = 0; round < 3; round++) {
      System.gc();
      Thread.sleep(50);
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  /** Every request gets the answer that is its own; the memory does not grow with their number. */
  @Test
  void aThousandRequestsAreAnsweredInFlatMemory() throws Exception {
    ExecutorService clients = Executors.newFixedThreadPool(4);
    try (ScenarioServer server = server(Duration.ofMinutes(2), 5)) {
      Case good = new Case("POST", "/compare", SMALL, 200);
      String first = send(server, good).body();
      assertTrue(first.contains("\"headline\""), first);
      long[] used = new long[2];
      for (int half = 0; half < 2; half++) {
        List<Case> cases = new ArrayList<>();
        List<Future<HttpResponse<String>>> answers = new ArrayList<>();
        for (int number = 0; number < REQUESTS / 2; number++) {
          Case each = number == 100 ? good : MALFORMED.get(number % MALFORMED.size());
          cases.add(each);
          answers.add(clients.submit(() -> send(server, each)));
        }
        for (int number = 0; number < cases.size(); number++) {
          Case each = cases.get(number);
          HttpResponse<String> answer = answers.get(number).get();
          assertEquals(each.status(), answer.statusCode(), each + ": " + answer.body());
          if (each.status() == 200) {
            assertEquals(first, answer.body());
          } else {
            assertTrue(answer.body().startsWith("{\"error\":\""), answer.body());
          }
        }
        used[half] = usedMemory();
      }
      assertTrue(used[1] < used[0] + 10_000_000, used[0] + " then " + used[1] + " bytes");
    } finally {
      clients.shutdownNow();
    }
  }

  /** What takes too long is stopped, and its place is free for the next. */
  @Test
  void theTimeLimitStopsTheComputation() throws Exception {
    try (ScenarioServer server = server(Duration.ofMillis(1), 5)) {
      for (int round = 0; round < 8; round++) {
        Case good = new Case("POST", "/compare", SMALL, 504);
        int status = send(server, good).statusCode();
        assertTrue(status == 504, "status " + status + " in round " + round);
      }
      assertEquals(400, send(server, MALFORMED.get(0)).statusCode());
    }
  }
}
