package stenotherm.examples;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;

/** What the program says to a command line, and its exit code. */
record Said(int code, String out, String err) {
  static Said to(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Stenotherm.run(
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            Stream.of(args).map(Object::toString).toArray(String[]::new));
    return new Said(code, out.toString(), err.toString());
  }
}
