package club.ascham.verdict;

import java.util.List;
import java.util.Optional;

/**
 * One thing that a verdict says, as data: what is said, and of what. It is put into words when it
 * is shown, and no words are ever read back.
 *
 * @param of what goes into the saying's blanks, in order
 * @throws IllegalArgumentException where the saying leaves other things open
 */
public record Remark(Saying saying, List<Object> of) {
  public Remark {
    of = List.copyOf(of.stream().map(Remark::onOneLine).toList());
    if (!saying.takes(of)) {
      throw new IllegalArgumentException(saying + " is not said of " + of);
    }
  }

  private static Object onOneLine(Object value) {
    return value instanceof String words ? Blank.oneLine(words) : value;
  }

  public static Remark of(Saying saying, Object... of) {
    return new Remark(saying, List.of(of));
  }

  /** Words that were given as such: kept before there were sayings, or come from elsewhere. */
  public static Remark asSaid(String words) {
    return of(Saying.AS_SAID, words);
  }

  public String words() {
    return saying.words(of);
  }

  /** What can hurt someone here; empty: nothing beyond the ordinary. */
  public Optional<String> caution() {
    return saying.caution(of);
  }

  /** The part that it is said of; empty: none by itself. */
  public Optional<BowPart> part() {
    return of.stream().filter(BowPart.class::isInstance).map(BowPart.class::cast).findFirst();
  }

  public static List<String> words(List<Remark> remarks) {
    return remarks.stream().map(Remark::words).toList();
  }

  /** What of it is beyond anything that a verdict says; empty: nothing. */
  public Optional<String> beyond() {
    return saying.beyond(of);
  }

  /** What it is said of as it is kept: whole numbers, numbers, words, and lists of these. */
  public List<Object> kept() {
    return of.stream().map(Blank::kept).toList();
  }

  /**
   * What was kept by the saying's name and {@link #kept}.
   *
   * @throws IllegalArgumentException for what is no remark
   */
  public static Remark read(String saying, List<?> kept) {
    Saying says = Saying.valueOf(saying);
    return new Remark(says, says.read(kept));
  }
}
