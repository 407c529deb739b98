package club.ascham.units;

/** What became of a length that a person typed. */
public sealed interface LengthParse {

  /**
   * A length that makes sense.
   *
   * @param unit the unit it was typed in, or the assumed one where none was typed
   */
  record Read(Length length, LengthUnit unit, String asTyped) implements LengthParse {}

  /**
   * A length that looks like a slip of unit, to be asked back and never stored unasked: it makes no
   * sense as read but does in {@code likelyUnit}, or it is a bare fraction where a metric unit was
   * assumed, and people write fractions for inches.
   */
  record Unlikely(
      Length asRead, LengthUnit unit, Length likely, LengthUnit likelyUnit, String asTyped)
      implements LengthParse {

    /** What the person would have typed had they meant the likely reading: {@code 8.75 in}. */
    public String likelyText() {
      return LengthReader.numberIn(asTyped) + " " + likelyUnit.symbol();
    }

    /** The question to put at the field. */
    public String question() {
      return "%s was read in %s. Did you mean %s (%s)?"
          .formatted(Quoted.of(asTyped), unit.plural(), likelyText(), LengthText.both(likely));
    }
  }

  /** No usable length; the message says why and what would be accepted. */
  record Unreadable(String message) implements LengthParse {}
}
