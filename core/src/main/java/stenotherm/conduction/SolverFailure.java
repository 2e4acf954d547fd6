package stenotherm.conduction;

/** A solver that cannot go on; public methods turn it into a failed outcome. */
final class SolverFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  SolverFailure(String message) {
    super(message);
  }
}
