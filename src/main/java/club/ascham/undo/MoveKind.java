package club.ascham.undo;

/** What a press did that may be undone. */
public enum MoveKind {
  RECEIPT("receipt", "Received"),
  SESSION_RETURN("return", "Session’s return"),
  EXCHANGE("exchange", "Exchanged"),
  PUT_BACK("put-back", "Put back");

  private final String word;
  private final String done;

  MoveKind(String word, String done) {
    this.word = word;
    this.done = done;
  }

  /** {@code receipt}. */
  public String word() {
    return word;
  }

  /** What a list says was done: {@code Received}. */
  public String done() {
    return done;
  }

  /** The words on its button. */
  public String button() {
    return "Undo this " + word;
  }

  /** Whether undoing it makes something that came in be out again. */
  boolean sendsOut() {
    return this != PUT_BACK;
  }
}
