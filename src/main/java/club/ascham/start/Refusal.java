package club.ascham.start;

/** Not starting; the message is for whoever started it, and says what to do. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private Refusal(String sentence) {
    super(sentence);
  }

  static Refusal because(String sentence) {
    return new Refusal("Ascham does not start. " + sentence);
  }

  /** The refusal behind a failure to start; null: there is none. */
  static Refusal in(Throwable failure) {
    for (Throwable part = failure; part != null; part = part.getCause()) {
      if (part instanceof Refusal refusal) {
        return refusal;
      }
    }
    return null;
  }
}
