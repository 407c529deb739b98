package club.ascham.verdict;

/** What is measured and judged in a check. */
public enum Quantity {
  BRACE("brace"),
  TILLER("tiller");

  private final String words;

  Quantity(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
