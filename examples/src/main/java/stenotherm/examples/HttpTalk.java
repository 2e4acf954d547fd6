package stenotherm.examples;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;

/**
 * One request over one connection, as HTTP/1.1: read within a time, answered once, then closed.
 *
 * <p>The Java machine's own server neither limits the time of a single request nor tells when the
 * one who asks has gone; this does, and no more than such a service needs: a request's body has a
 * length, and no connection is kept for another request.
 *
 * <p>Not thread-safe.
 */
final class HttpTalk {
  /** Longest head of a request [byte]. */
  private static final int HEAD = 8192;

  /** What is still read after the answer, lest its sender misses it [byte]. */
  private static final long DRAINED = 1_000_000;

  private static final int LATE = 408;

  private static final Map<Integer, String> REASONS =
      Map.ofEntries(
          Map.entry(200, "OK"),
          Map.entry(400, "Bad Request"),
          Map.entry(404, "Not Found"),
          Map.entry(405, "Method Not Allowed"),
          Map.entry(LATE, "Request Timeout"),
          Map.entry(411, "Length Required"),
          Map.entry(413, "Content Too Large"),
          Map.entry(422, "Unprocessable Content"),
          Map.entry(431, "Request Header Fields Too Large"),
          Map.entry(500, "Internal Server Error"),
          Map.entry(503, "Service Unavailable"),
          Map.entry(504, "Gateway Timeout"));

  private final Socket socket;
  private final InputStream in;
  private final Duration time;
  private long end;
  private int left = HEAD;

  /** A request that cannot be served, and the status that says so. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final int status;

    Refused(int status, String problem) {
      super(problem);
      this.status = status;
    }

    int status() {
      return status;
    }
  }

  /**
   * The head of a request.
   *
   * @param length of the body [byte]
   * @param asksFirst whether its sender waits until it is told to send the body
   */
  record Head(String method, String path, long length, boolean asksFirst) {}

  /** Begins to talk; whoever asks has so much time to send all of the request. */
  HttpTalk(Socket socket, Duration time) throws IOException {
    this.socket = socket;
    this.in = new BufferedInputStream(socket.getInputStream());
    this.time = time;
    this.end = System.nanoTime() + time.toNanos();
  }

  /**
   * Reads the head of the request.
   *
   * @throws Refused if it is none, or too long, or takes too long
   * @throws IOException if the connection ended
   */
  Head head() throws IOException, Refused {
    String[] first = line().split(" ", -1);
    if (first.length != 3 || !first[2].startsWith("HTTP/1.")) {
      throw new Refused(400, "is no request of HTTP/1.1");
    }
    long length = 0;
    boolean asksFirst = false;
    for (String line = line(); !line.isEmpty(); line = line()) {
      int colon = line.indexOf(':');
      String name = line.substring(0, Math.max(0, colon)).toLowerCase(Locale.ROOT);
      String value = line.substring(colon + 1).strip();
      if (name.equals("content-length")) {
        length = length(value);
      } else if (name.equals("transfer-encoding")) {
        throw new Refused(411, "send the file with its Content-Length");
      } else if (name.equals("expect")) {
        asksFirst = true;
      }
    }
    return new Head(first[0], first[1].replaceFirst("\\?.*", ""), length, asksFirst);
  }

  private static long length(String value) throws Refused {
    if (!value.matches("[0-9]{1,18}")) {
      throw new Refused(400, "Content-Length must be a number");
    }
    return Long.parseLong(value);
  }

  /** Reads the body, whose length was looked at. */
  byte[] body(Head head) throws IOException, Refused {
    if (head.asksFirst()) {
      socket
          .getOutputStream()
          .write("HTTP/1.1 100 Continue\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
    }
    byte[] body = new byte[(int) head.length()];
    int read = 0;
    while (read < body.length) {
      read += read(body, read);
    }
    return body;
  }

  private String line() throws IOException, Refused {
    StringBuilder line = new StringBuilder();
    byte[] one = new byte[1];
    for (read(one, 0); one[0] != '\n'; read(one, 0)) {
      if (--left < 0) {
        throw new Refused(431, "the head of a request may have " + HEAD + " bytes");
      }
      line.append((char) (one[0] & 0xff));
    }
    return line.toString().strip();
  }

  /** Reads some bytes, at least one. */
  private int read(byte[] bytes, int from) throws IOException, Refused {
    try {
      long millis = (end - System.nanoTime()) / 1_000_000;
      if (millis <= 0) {
        throw tooSlow();
      }
      socket.setSoTimeout((int) Math.min(Integer.MAX_VALUE, millis));
      int read = in.read(bytes, from, bytes.length - from);
      if (read < 0) {
        throw new EOFException("ended within a request");
      }
      return read;
    } catch (SocketTimeoutException late) {
      throw tooSlow();
    }
  }

  /** Whether the one who asked has closed the connection, or the half of it that it sends on. */
  boolean isLeft() {
    try {
      socket.setSoTimeout(1);
      return in.read() < 0;
    } catch (SocketTimeoutException waits) {
      return false;
    } catch (IOException gone) {
      return true;
    }
  }

  /**
   * Says the answer and waits until the other side has it.
   *
   * @param allow methods that are allowed, for whoever used another; else empty
   */
  void answer(int status, String json, String allow) throws IOException {
    byte[] body = json.getBytes(StandardCharsets.UTF_8);
    String head =
        "HTTP/1.1 "
            + status
            + " "
            + REASONS.getOrDefault(status, "Other")
            + "\r\nContent-Type: application/json; charset=utf-8\r\nContent-Length: "
            + body.length
            + (allow.isEmpty() ? "" : "\r\nAllow: " + allow)
            + "\r\nConnection: close\r\n\r\n";
    OutputStream to = socket.getOutputStream();
    to.write(head.getBytes(StandardCharsets.US_ASCII));
    to.write(body);
    socket.shutdownOutput();
    end = System.nanoTime() + time.toNanos();
    byte[] rest = new byte[HEAD];
    try {
      // a connection closed with something unread takes the answer away
      for (long drained = 0; drained < DRAINED; ) {
        drained += read(rest, 0);
      }
    } catch (EOFException | Refused done) {
      // it has the answer, or does not care
    }
  }

  private static Refused tooSlow() {
    return new Refused(LATE, "the request came too slowly");
  }
}
