package club.ascham.units;

/** What became of a code that was typed or scanned. */
public sealed interface CodeParse {

  /** The code of one item. */
  record Whole(ItemCode code) implements CodeParse {}

  /**
   * One limb of a pair. The letter for upper or lower stands outside the check character: a slip in
   * it still opens the right pair.
   */
  record LimbOfPair(ItemCode pair, boolean upper) implements CodeParse {
    /** As on the limb: {@code L-0147-X-U}. */
    public String display() {
      return pair.display() + (upper ? "-U" : "-L");
    }
  }

  /** It has a code's shape, but no item can have it. */
  record WrongCheck(String message) implements CodeParse {}

  /** It is no code at all; where a page also takes names, it may be one. */
  record NotACode(String message) implements CodeParse {}
}
