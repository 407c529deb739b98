package club.ascham.start;

/** Not starting; the message is for whoever started it, and says what to do. */
final class NotStarting extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private NotStarting(String sentence) {
    super(sentence);
  }

  static NotStarting because(String sentence) {
    return new NotStarting("Ascham does not start. " + sentence);
  }

  /** The refusal behind a failure to start; null: there is none. */
  static NotStarting in(Throwable failure) {
    for (Throwable part = failure; part != null; part = part.getCause()) {
      if (part instanceof NotStarting refusal) {
        return refusal;
      }
    }
    return null;
  }
}
