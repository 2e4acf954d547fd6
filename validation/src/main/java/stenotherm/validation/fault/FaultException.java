package stenotherm.validation.fault;

/** A fault that cannot be put into core: its patch does not fit, or does not compile. */
final class FaultException extends RuntimeException {
  private static final long serialVersionUID = 1;

  FaultException(String message) {
    super(message);
  }

  FaultException(String message, Throwable cause) {
    super(message, cause);
  }
}
