package club.ascham.units;

/** What became of a code that was typed or scanned. */
public sealed interface CodeParse {

  /** An item can have it. */
  sealed interface OfItem extends CodeParse {
    /** The code of the item: of a single limb, its pair's. */
    ItemCode item();
  }

  /** No item can have it. */
  sealed interface OfNone extends CodeParse {
    /** Why, to whoever typed it. */
    String message();
  }

  /** The code of one item. */
  record Whole(ItemCode item) implements OfItem {}

  /**
   * One limb of a pair. The letter for upper or lower stands outside the check character: a slip in
   * it still opens the right pair.
   */
  record LimbOfPair(ItemCode item, boolean upper) implements OfItem {
    /** As on the limb: {@code L-0147-X-U}. */
    public String display() {
      return item.display() + (upper ? "-U" : "-L");
    }
  }

  /** It has a code's shape, but no item can have it. */
  record WrongCheck(String message) implements OfNone {}

  /** It is no code at all; where a page also takes names, it may be one. */
  record NotACode(String message) implements OfNone {}
}
