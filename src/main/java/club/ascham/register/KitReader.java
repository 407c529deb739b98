package club.ascham.register;

import club.ascham.bow.Hand;
import club.ascham.form.Typed;
import club.ascham.units.Grains;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the smaller things of a kit. */
final class KitReader {
  private static final int LONGEST_SIZE = 40;
  private static final double LIGHTEST_GR = 50;
  private static final double HEAVIEST_GR = 1500;
  private static final Pattern MASS =
      Pattern.compile(
          "(?<number>[0-9]{1,9}(?:[.,][0-9]{1,9})?)\\s*(?:(?<grains>gr|grains?)|(?<grams>g))?");

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
    Double massGr = massGr(typed);
    boolean pool = fields.yes("pool");
    Integer count = typed.whole("arrowCount", pool ? 0 : 1, 2000);
    if (count == null) {
      typed.fault("arrowCount", "Say how many arrows there are.");
    }
    return new Particulars.OfKitItem(null, null, length, spine, massGr, count, pool);
  }

  /** In grains unless it says grams; what makes sense in grams alone is asked back. */
  private static Double massGr(Typed typed) {
    String field = "arrowMassGr";
    Matcher mass = MASS.matcher(typed.value(field).toLowerCase(Locale.ROOT));
    if (!mass.matches()) {
      return typed.decimal(field, LIGHTEST_GR, HEAVIEST_GR);
    }
    String number = mass.group("number");
    double asRead = Double.parseDouble(number.replace(',', '.'));
    double asGrams = Grains.ofGrams(asRead);
    double grains = mass.group("grams") == null ? asRead : asGrams;
    if (isAnArrows(grains)) {
      return grains;
    }
    if (mass.group("grams") == null && mass.group("grains") == null && isAnArrows(asGrams)) {
      typed.fault(
          field,
          "\"%s\" was read in grains. Did you mean %s g (%s)?"
              .formatted(number, number, Grains.said(asGrams)),
          number + " g");
    } else {
      typed.fault(field, "A whole arrow weighs from 50 to 1500 gr.");
    }
    return null;
  }

  private static boolean isAnArrows(double grains) {
    return grains >= LIGHTEST_GR && grains <= HEAVIEST_GR;
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
    fields.refuse("arrowMassGr", notArrows);
    fields.refuse("arrowCount", notArrows);
    fields.refuse("pool", notArrows);
    return new Particulars.OfKitItem(hand, size, null, null, null, null, false);
  }
}
