package club.ascham.worksheet;

import club.ascham.assembly.ChangeMoment;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The replacing of a string as a person gives it.
 *
 * @param newString the code of the string that takes its place
 * @param oldString what becomes of the old one
 * @param words what was found; null: nothing worth keeping
 * @param on the day it was done; null: now
 */
record Replacement(ItemCode newString, OldString oldString, String words, LocalDate on) {
  private static final int LONGEST = 1000;

  /** What becomes of a string that was taken off. */
  enum OldString {
    /** Cut through and thrown away: retired. */
    SCRAPPED,
    /** Stays as a spare. */
    KEPT;

    public String word() {
      return Words.of(this);
    }
  }

  /** Reads {@code newString}, {@code oldString}, {@code words} and {@code on}. */
  static Optional<Replacement> parse(Typed typed, LocalDate today) {
    ItemCode code = typed.code("newString");
    if (code == null) {
      typed.fault("newString", "Which string takes its place?");
    }
    OldString old =
        typed.requiredWord(
            "oldString", OldString.class, "What becomes of the old string: scrapped, or kept?");
    String words = typed.text("words", LONGEST);
    LocalDate on = ChangeMoment.read(typed, today);
    return typed.sound() ? Optional.of(new Replacement(code, old, words, on)) : Optional.empty();
  }
}
