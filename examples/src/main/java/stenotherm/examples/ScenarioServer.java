package stenotherm.examples;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import stenotherm.base.InvalidInputException;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.TextFormatException;
import stenotherm.words.LastWords;

/**
 * Answers scenarios that come over HTTP, on this machine's own address only: a POST of a scenario
 * file to {@code /compare} is answered with the JSON of the comparison.
 *
 * <p>Answers: 200 with the comparison; 400 a scenario that cannot be read; 404, 405 another path or
 * method; 413 a longer file than allowed; 422 a scenario that does not fit together or is too large
 * to compute; 503 all places are taken, ask again later; 504 the time is over, the computation was
 * stopped; 500 a fault of the program. All but 200 have a JSON object with an {@code error}. A
 * connection over which a request comes too slowly is closed. Who goes away before the answer does
 * not stop the computation; the limit of time does.
 *
 * <p>Thread-safe.
 */
final class ScenarioServer implements AutoCloseable {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /**
   * Longest time in which a request must have come [s], a property of the Java machine that its
   * server reads when the first one is made.
   */
  private static final String LONGEST_REQUEST = "sun.net.httpserver.maxReqTime";

  /** Requests that may be read or answered beside those whose scenarios are computed or wait. */
  private static final int TALKS = 64;

  private final HttpServer server;
  private final ExecutorService talking;
  private final ThreadPoolExecutor computing;
  private final Limits limits;
  private final Function<Scenario, String> question;

  /**
   * What a request may take.
   *
   * @param atATime comparisons at a time
   * @param waiting comparisons that may wait for their turn
   * @param time from a request's last byte to its answer
   * @param bytes longest scenario file
   */
  record Limits(int atATime, int waiting, Duration time, int bytes) {}

  /** What is said to a request. */
  private record Reply(int status, String json) {
    static Reply refusal(int status, String problem) {
      return new Reply(status, MAPPER.createObjectNode().put("error", problem).toString() + "\n");
    }
  }

  /**
   * Starts to listen.
   *
   * @param port the port; 0 for any that is free
   * @param limits what a request may take
   * @param question answers a scenario with JSON; an interrupt stops it
   * @throws IOException if the port is taken
   */
  ScenarioServer(int port, Limits limits, Function<Scenario, String> question) throws IOException {
    this.limits = limits;
    this.question = question;
    InetSocketAddress here = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
    server = HttpServer.create(here, 0);
    // more may talk than may compute: those are refused at once
    talking = Executors.newFixedThreadPool(limits.atATime() + limits.waiting() + TALKS);
    computing =
        new ThreadPoolExecutor(
            limits.atATime(),
            limits.atATime(),
            0,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(limits.waiting()));
    server.setExecutor(talking);
    server.createContext("/", this::handle);
    server.start();
  }

  /**
   * Sets in which time a request must have come, for all servers of this Java machine.
   *
   * @param seconds the time [s]
   */
  static void limitRequests(int seconds) {
    System.setProperty(LONGEST_REQUEST, String.valueOf(seconds));
  }

  /** The port that it listens on. */
  int port() {
    return server.getAddress().getPort();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Reply reply = reply(exchange);
      byte[] bytes = reply.json().getBytes(StandardCharsets.UTF_8);
      exchange.getResponseHeaders().set("Content-Type", "application/json; charset=utf-8");
      exchange.sendResponseHeaders(reply.status(), bytes.length);
      exchange.getResponseBody().write(bytes);
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    if (!exchange.getRequestURI().getPath().equals("/compare")) {
      return Reply.refusal(404, "there is /compare only");
    }
    if (!exchange.getRequestMethod().equals("POST")) {
      exchange.getResponseHeaders().set("Allow", "POST");
      return Reply.refusal(405, "post a scenario file");
    }
    byte[] body = exchange.getRequestBody().readNBytes(limits.bytes() + 1);
    if (body.length > limits.bytes()) {
      return Reply.refusal(413, "a scenario may have " + limits.bytes() + " bytes");
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
      return compare(ScenarioReader.read("scenario", text));
    } catch (CharacterCodingException | TextFormatException problem) {
      return Reply.refusal(400, "scenario: " + problem.getMessage());
    } catch (InvalidInputException problem) {
      return Reply.refusal(422, String.valueOf(problem.getMessage()));
    } catch (RuntimeException | Error fault) {
      return Reply.refusal(500, LastWords.of(fault));
    }
  }

  private Reply compare(Scenario scenario) {
    Future<String> answer;
    try {
      answer = computing.submit(() -> question.apply(scenario));
    } catch (RejectedExecutionException full) {
      return Reply.refusal(503, "all places are taken, ask again later");
    }
    try {
      return new Reply(200, answer.get(limits.time().toMillis(), TimeUnit.MILLISECONDS));
    } catch (TimeoutException over) {
      return Reply.refusal(504, "took longer than " + limits.time().toSeconds() + " s");
    } catch (InterruptedException | CancellationException stopped) {
      return Reply.refusal(503, "the server is stopping");
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof InvalidInputException problem) {
        throw problem;
      }
      Throwable cause = failure.getCause();
      return Reply.refusal(500, LastWords.of(cause == null ? failure : cause));
    } finally {
      // stops what still runs, and frees the place of what still waits
      answer.cancel(true);
      computing.purge();
    }
  }

  /** Stops to listen, and whatever is computed. */
  @Override
  public void close() {
    server.stop(0);
    computing.shutdownNow();
    talking.shutdownNow();
  }
}
