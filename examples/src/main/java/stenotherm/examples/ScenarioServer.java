package stenotherm.examples;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.EOFException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.SynchronousQueue;
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
 * <p>Answers: 200 with the comparison; 400 a scenario or a request that cannot be read; 404, 405
 * another path or method; 408 a request that comes too slowly; 411, 431 one without a length, or
 * with too long a head; 413 a longer file than allowed; 422 a scenario that does not fit together
 * or is too large to compute; 503 all places are taken, ask again later; 504 the time is over, the
 * computation was stopped; 500 a fault of the program. All but 200 have a JSON object with an
 * {@code error}. The computation of one who closes the connection is stopped.
 *
 * <p>Thread-safe.
 */
final class ScenarioServer implements AutoCloseable {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Requests that may be read or answered beside those whose scenarios are computed or wait. */
  private static final int TALKS = 64;

  /** How often it is looked whether the one who asks is still there [ms]. */
  private static final long LOOK = 100;

  private final ServerSocket listening;
  private final Set<Socket> talks = ConcurrentHashMap.newKeySet();
  private final ThreadPoolExecutor talking;
  private final ThreadPoolExecutor computing;
  private final ScheduledThreadPoolExecutor clock = new ScheduledThreadPoolExecutor(1);
  private final Limits limits;
  private final Function<Scenario, String> question;

  /**
   * What a request may take.
   *
   * @param atATime comparisons at a time
   * @param waiting comparisons that may wait for their turn
   * @param time from a request's last byte to its answer
   * @param talk to send a request, and to take its answer
   * @param bytes longest scenario file
   */
  record Limits(int atATime, int waiting, Duration time, Duration talk, int bytes) {}

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
    listening = new ServerSocket(port, limits.waiting() + TALKS, InetAddress.getLoopbackAddress());
    // more may talk than may compute: those are refused at once
    talking =
        new ThreadPoolExecutor(
            0,
            limits.atATime() + limits.waiting() + TALKS,
            1,
            TimeUnit.SECONDS,
            new SynchronousQueue<>());
    computing =
        new ThreadPoolExecutor(
            limits.atATime(),
            limits.atATime(),
            0,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(limits.waiting()));
    clock.setRemoveOnCancelPolicy(true);
    new Thread(this::listen, "listening").start();
  }

  /** The port that it listens on. */
  int port() {
    return listening.getLocalPort();
  }

  private void listen() {
    while (!listening.isClosed()) {
      try {
        Socket socket = listening.accept();
        talks.add(socket);
        try {
          talking.execute(() -> talk(socket));
        } catch (RejectedExecutionException full) {
          end(socket);
        }
      } catch (IOException closed) {
        // ends the loop, or was one connection that failed
      }
    }
  }

  private void talk(Socket socket) {
    try {
      HttpTalk talk = new HttpTalk(socket, limits.talk());
      Reply reply = reply(talk);
      Future<?> late =
          clock.schedule(() -> end(socket), limits.talk().toMillis(), TimeUnit.MILLISECONDS);
      talk.answer(reply.status(), reply.json(), reply.status() == 405 ? "POST" : "");
      late.cancel(false);
    } catch (IOException gone) {
      // nobody is there to be told
    } finally {
      end(socket);
    }
  }

  private void end(Socket socket) {
    talks.remove(socket);
    try {
      socket.close();
    } catch (IOException already) {
      // it is of no more use
    }
  }

  private Reply reply(HttpTalk talk) throws IOException {
    try {
      HttpTalk.Head head = talk.head();
      if (!head.path().equals("/compare")) {
        return Reply.refusal(404, "there is /compare only");
      }
      if (!head.method().equals("POST")) {
        return Reply.refusal(405, "post a scenario file");
      }
      if (head.length() > limits.bytes()) {
        return Reply.refusal(413, "a scenario may have " + limits.bytes() + " bytes");
      }
      byte[] body = talk.body(head);
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
      return compare(talk, ScenarioReader.read("scenario", text));
    } catch (HttpTalk.Refused refused) {
      return Reply.refusal(refused.status(), String.valueOf(refused.getMessage()));
    } catch (CharacterCodingException | TextFormatException problem) {
      return Reply.refusal(400, "scenario: " + problem.getMessage());
    } catch (InvalidInputException problem) {
      return Reply.refusal(422, String.valueOf(problem.getMessage()));
    } catch (RuntimeException | Error fault) {
      return Reply.refusal(500, LastWords.of(fault));
    }
  }

  private Reply compare(HttpTalk talk, Scenario scenario) throws IOException {
    Future<String> answer;
    try {
      answer = computing.submit(() -> question.apply(scenario));
    } catch (RejectedExecutionException full) {
      return Reply.refusal(503, "all places are taken, ask again later");
    }
    try {
      return awaited(talk, answer);
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

  private Reply awaited(HttpTalk talk, Future<String> answer)
      throws IOException, InterruptedException, ExecutionException {
    long end = System.nanoTime() + limits.time().toNanos();
    while (true) {
      long left = Math.max(0, (end - System.nanoTime()) / 1_000_000);
      try {
        return new Reply(200, answer.get(Math.min(LOOK, left), TimeUnit.MILLISECONDS));
      } catch (TimeoutException notYet) {
        if (left <= LOOK) {
          return Reply.refusal(504, "took longer than " + limits.time().toSeconds() + " s");
        }
        if (talk.isLeft()) {
          throw new EOFException("nobody waits for the answer");
        }
      }
    }
  }

  /** Stops to listen, and whatever is computed. */
  @Override
  public void close() {
    try {
      listening.close();
    } catch (IOException already) {
      // it is of no more use
    }
    computing.shutdownNow();
    talking.shutdownNow();
    clock.shutdownNow();
    talks.forEach(this::end);
  }
}
