package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionService;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import stenotherm.grid.GridBudget;
import stenotherm.report.HurriedComparison;
import stenotherm.transit.TransitSettings;

@Timeout(value = 10, unit = TimeUnit.MINUTES)
class ScenarioServerTest {
  private static final int REQUESTS = 300;
  private static final int BYTES = 4000;
  private static final Duration LONG = Duration.ofMinutes(2);

  /** Mild enough to hold, so that no changes are tried. */
  private static final String SMALL =
      Small.SCENARIO
          .replaceAll("  - \\{name: 'warm[^\n]*\n", "")
          .replace("hold: 3 h", "hold: 1 h")
          .replaceAll("ambient: 1[24] °C", "ambient: 24 °C");

  /** Another animal, told in other units. */
  private static final String OTHER =
      SMALL.replace("leopard gecko, 40 g", "corn snake, 100 g") + "units: us\n";

  /** Read when the first server is made. */
  static {
    ScenarioServer.limitRequests(3);
  }

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
    return new ScenarioServer(
        0,
        new ScenarioServer.Limits(1, 4, time, BYTES),
        scenario -> HurriedComparison.run(scenario, settings).json());
  }

  /** A question that is answered when it is told to, or stopped. */
  private static final class Held {
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch released = new CountDownLatch(1);

    ScenarioServer server(int atATime, int waiting) throws IOException {
      return new ScenarioServer(
          0,
          new ScenarioServer.Limits(atATime, waiting, LONG, BYTES),
          scenario -> {
            begun.countDown();
            try {
              released.await();
            } catch (InterruptedException stop) {
              throw new CancellationException("stopped");
            }
            return "{}";
          });
    }
  }

  /** A client that sends what it likes. */
  private static Socket sent(ScenarioServer server, String text) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
    socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
    return socket;
  }

  private static String post(String body) {
    int length = body.getBytes(StandardCharsets.UTF_8).length;
    return "POST /compare HTTP/1.1\r\nConnection: close\r\nContent-Length: "
        + length
        + "\r\n\r\n"
        + body;
  }

  /** All that comes until the connection is closed, in whatever way. */
  private static String heard(Socket socket) throws IOException {
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
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
  void hundredsOfRequestsAreAnsweredInFlatMemory() throws Exception {
    ExecutorService clients = Executors.newFixedThreadPool(4);
    try (ScenarioServer server = server(Duration.ofMinutes(2), 5)) {
      Map<String, String> first = new HashMap<>();
      for (String body : List.of(SMALL, OTHER)) {
        first.put(body, send(server, new Case("POST", "/compare", body, 200)).body());
      }
      assertTrue(String.valueOf(first.get(SMALL)).contains("°C"), first.toString());
      assertTrue(String.valueOf(first.get(OTHER)).contains("°F"), first.toString());
      long[] used = new long[2];
      for (int half = 0; half < 2; half++) {
        List<Case> cases = new ArrayList<>();
        List<Future<HttpResponse<String>>> answers = new ArrayList<>();
        for (int number = 0; number < REQUESTS / 2; number++) {
          Case each =
              number == 100
                  ? new Case("POST", "/compare", half == 0 ? SMALL : OTHER, 200)
                  : MALFORMED.get(number % MALFORMED.size());
          cases.add(each);
          answers.add(clients.submit(() -> send(server, each)));
        }
        for (int number = 0; number < cases.size(); number++) {
          Case each = cases.get(number);
          HttpResponse<String> answer = answers.get(number).get();
          assertEquals(each.status(), answer.statusCode(), each + ": " + answer.body());
          if (each.status() == 200) {
            assertEquals(first.get(each.body()), answer.body());
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

  @Test
  void whoComesWhenAllPlacesAreTakenIsToldSo() throws Exception {
    Held held = new Held();
    try (ScenarioServer server = held.server(1, 1);
        Socket computed = sent(server, post(SMALL))) {
      held.begun.await();
      // one of the next two waits, the other one finds no place
      try (Socket one = sent(server, post(SMALL));
          Socket other = sent(server, post(SMALL))) {
        ExecutorService readers = Executors.newFixedThreadPool(2);
        CompletionService<String> answers = new ExecutorCompletionService<>(readers);
        answers.submit(() -> heard(one));
        answers.submit(() -> heard(other));
        String refused = answers.take().get();
        assertTrue(refused.startsWith("HTTP/1.1 503 "), refused);
        assertTrue(refused.contains("ask again later"), refused);
        held.released.countDown();
        assertTrue(heard(computed).startsWith("HTTP/1.1 200 "));
        assertTrue(answers.take().get().startsWith("HTTP/1.1 200 "));
        readers.shutdown();
      }
    }
  }

  /** More clients that stall than there are places: within a head or within a body. */
  @Test
  void clientsThatStallHoldNobodyAndAreCutOff() throws Exception {
    Held held = new Held();
    held.released.countDown();
    List<Socket> stalled = new ArrayList<>();
    try (ScenarioServer server = held.server(1, 1)) {
      String whole = post(SMALL);
      for (int client = 0; client < 12; client++) {
        int end = client % 2 == 0 ? 20 : whole.length() - 10;
        stalled.add(sent(server, whole.substring(0, end)));
      }
      HttpResponse<String> good = send(server, new Case("POST", "/compare", SMALL, 200));
      assertEquals(200, good.statusCode(), good.body());
      for (Socket each : stalled) {
        String answer = heard(each);
        assertEquals("", answer, "closed without an answer");
      }
    } finally {
      for (Socket each : stalled) {
        each.close();
      }
    }
  }
}
