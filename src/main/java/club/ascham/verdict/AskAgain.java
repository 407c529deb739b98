package club.ascham.verdict;

import java.util.List;

/**
 * No verdict yet: something was not measured, not looked at, or can't be compared. Nothing is
 * saved; each question goes back to its field.
 */
public record AskAgain(List<Question> questions) implements Judgement {
  public AskAgain {
    questions = List.copyOf(questions);
  }

  /** One question and the field it belongs to. */
  public record Question(About about, String words) {}

  /** The fields a question can go back to. */
  public enum About {
    BRACE,
    TILLER,
    /** Whether each figure was measured by itself. */
    EACH,
    /** Whether someone looked that limbs and loops are seated. */
    SEATED,
    STRING,
    LIMBS,
    BOLTS;

    static About of(BowPart part) {
      return switch (part) {
        case STRING -> STRING;
        case LIMBS -> LIMBS;
        case BOLTS -> BOLTS;
        case RISER, REST -> throw new IllegalArgumentException(part + " is never asked for");
      };
    }
  }
}
