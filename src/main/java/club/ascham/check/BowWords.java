package club.ascham.check;

import club.ascham.bow.BracePoint;
import club.ascham.bow.RigSpec;
import club.ascham.rig.Part;
import club.ascham.rig.RigCard;
import java.util.Locale;
import java.util.StringJoiner;

/** A bow in a few words, for someone who has it in hand. */
final class BowWords {
  private BowWords() {}

  /** {@code Fenlight 25 · 68 in · 22 lb · right-handed}. */
  static String facts(RigCard card) {
    StringJoiner facts = new StringJoiner(" · ");
    if (card.body() != null) {
      facts.add(card.body().name());
    }
    card.spec().ifPresent(spec -> add(facts, spec));
    return facts.toString();
  }

  private static void add(StringJoiner facts, RigSpec spec) {
    if (spec.bowLengthIn().isPresent()) {
      facts.add(spec.bowLengthIn().getAsInt() + " in");
    }
    double lb = spec.onePiece() != null ? spec.onePiece().markedLb() : spec.limbs().markedLb();
    facts.add(lb == Math.rint(lb) ? (long) lb + " lb" : lb + " lb");
    if (spec.hand() != null) {
      facts.add(spec.hand().name().toLowerCase(Locale.ROOT) + "-handed");
    }
  }

  /** {@code riser Fenlight 25}. */
  static String part(Part part) {
    String kind = part.kind().said();
    return part.name().equals(kind) ? kind : kind + " " + part.name();
  }

  static String from(BracePoint point) {
    return switch (point) {
      case GRIP_THROAT -> "the throat of the grip";
      case BUTTON -> "the button";
    };
  }
}
