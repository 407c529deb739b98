package club.ascham.bow;

/**
 * One reason why parts can't be used together.
 *
 * @param reason what does not fit, naming both sides
 * @param remedy what would make it possible
 */
public record Misfit(Kind kind, String reason, String remedy) {
  /** The rule that the parts break. */
  public enum Kind {
    BUILD,
    FITTING,
    MODEL,
    BOW_LENGTH,
    STRING_DESIGNATION,
    STRING_MEASURED,
    STRING_MATERIAL,
    STRINGER_LENGTH
  }
}
