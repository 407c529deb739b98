package club.ascham.report;

/** What came of looking at what was told. */
public enum Answer {
  NOTHING_THERE("looked: nothing there"),
  /** That part is taken out of use. */
  STOP("this part: stop"),
  /** It goes on, and whoever has it in hand looks, to an end day. */
  WATCH("watch it");

  private final String said;

  Answer(String said) {
    this.said = said;
  }

  public String said() {
    return said;
  }
}
