package club.ascham.verdict;

/**
 * What was seen on one part.
 *
 * @param words one line
 * @param source why it weighs what it does
 */
public record Sign(BowPart part, Gravity gravity, String words, String source) {

  /** A sign in the reader's own words, weighed by the reader. */
  public Sign(BowPart part, Gravity gravity, String words) {
    this(part, gravity, words, "weighed by the person who looked");
  }
}
