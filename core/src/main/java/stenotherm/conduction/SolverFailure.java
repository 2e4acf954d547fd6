package stenotherm.conduction;

/**
 * A solver that cannot go on; public methods turn it into a failed outcome, or let it pass as an
 * {@link IllegalStateException} where they have none.
 */
final class SolverFailure extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  SolverFailure(String message) {
    super(message);
  }
}
