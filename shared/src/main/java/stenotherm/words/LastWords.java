package stenotherm.words;

import stenotherm.base.MessageText;

/**
 * What a program says when it ends as nobody foresaw: one line instead of a stack trace.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class LastWords {
  private static final String PACKAGE = "stenotherm.";
  private static final int LONGEST_REASON = 120;

  private LastWords() {}

  /**
   * Tells whether a program ended for want of memory, which is no fault of it.
   *
   * @param end what ended it
   * @return true if it, or what caused it, is a want of memory
   */
  public static boolean isWantOfMemory(Throwable end) {
    for (Throwable cause = end; cause != null; cause = cause.getCause()) {
      if (cause instanceof OutOfMemoryError) {
        return true;
      }
    }
    return false;
  }

  /**
   * Says how a program ended and what to do about it.
   *
   * @param end what ended it
   * @return a line of at most {@value MessageText#LONGEST} printable characters
   */
  public static String of(Throwable end) {
    if (isWantOfMemory(end)) {
      return "out of memory: this Java machine may take "
          + (Runtime.getRuntime().maxMemory() >> 20)
          + " MB. Give it more, as in 'java -Xmx4g -jar ...', or let fewer things run at a time.";
    }
    return MessageText.of(
        "unforeseen: "
            + end.getClass().getSimpleName()
            + (end.getMessage() == null
                ? ""
                : " '" + MessageText.of(end.getMessage(), LONGEST_REASON) + "'")
            + place(end)
            + ". This is a fault of Stenotherm: please report this line with the file that led to"
            + " it, as README.md says under 'Faults'.");
  }

  /** The innermost method of this project, by which a fault is found again. */
  private static String place(Throwable end) {
    for (StackTraceElement call : end.getStackTrace()) {
      if (call.getClassName().startsWith(PACKAGE)) {
        String type = call.getClassName().substring(call.getClassName().lastIndexOf('.') + 1);
        return " in " + type + "." + call.getMethodName() + ", line " + call.getLineNumber();
      }
    }
    return "";
  }
}
