package club.ascham.register;

import club.ascham.bow.Hand;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;

/** Reads the smaller things of a kit. */
final class KitReader {
  private static final int LONGEST_SIZE = 40;

  private KitReader() {}

  static Particulars kitItem(ItemKind kind, Fields fields) {
    return kind == ItemKind.ARROWS ? arrows(fields) : worn(kind, fields);
  }

  private static Particulars arrows(Fields fields) {
    Typed typed = fields.typed();
    fields.refuse("hand", "Arrows are for either hand: leave this empty.");
    fields.refuse("size", "Arrows go by length and spine: leave this empty.");
    // Inches for every unit a person may prefer: arrows are sold and cut by the inch.
    Length length = typed.length("arrowLength", LengthUnit.INCH, Plausible.ARROW_LENGTH);
    if (!typed.has("arrowLength")) {
      typed.fault(
          "arrowLength",
          "Give the length, nock groove to the end of the shaft: it keeps the fingers safe.");
    }
    Integer spine = typed.whole("spine", 200, 3000);
    boolean pool = fields.yes("pool");
    Integer count = typed.whole("arrowCount", pool ? 0 : 1, 2000);
    if (count == null) {
      typed.fault("arrowCount", "Say how many arrows there are.");
    }
    return new Particulars.OfKitItem(null, null, length, spine, count, pool);
  }

  private static Particulars worn(ItemKind kind, Fields fields) {
    Typed typed = fields.typed();
    Hand hand =
        kind == ItemKind.TAB
            ? typed.requiredWord("hand", Hand.class, "Say which hand draws the string.")
            : fields.wordOr("either", "hand", Hand.class);
    String size = typed.optional("size", LONGEST_SIZE);
    String notArrows = "Only arrows have that: leave this empty.";
    fields.refuse("arrowLength", notArrows);
    fields.refuse("spine", notArrows);
    fields.refuse("arrowCount", notArrows);
    fields.refuse("pool", notArrows);
    return new Particulars.OfKitItem(hand, size, null, null, null, false);
  }
}
