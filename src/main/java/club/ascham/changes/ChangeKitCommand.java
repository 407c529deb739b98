package club.ascham.changes;

import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.ItemAsked;
import club.ascham.rig.AdviceOverridden;
import club.ascham.units.ItemCode;
import java.util.Optional;

/**
 * Something handed back, something given out, or one for the other, while the loan goes on.
 *
 * @param lineBack the line that is handed back; null: nothing is
 * @param countBack how many of its arrows come back; null: all of them
 * @param given what is given out; null: nothing is
 * @param overrideWhy why it goes out although something speaks against it; null: no reason given
 */
record ChangeKitCommand(
    LoanId loan, Long lineBack, Integer countBack, ItemAsked given, String overrideWhy) {
  /** As typed; empty when something is missing or wrong, which then stands at its field. */
  static Optional<ChangeKitCommand> parse(LoanId loan, Typed typed) {
    Integer line = typed.whole("line", 1, Integer.MAX_VALUE);
    ItemCode code = typed.code("item");
    Integer count = typed.whole("count", 1, 2000);
    Integer countBack = typed.whole("countBack", 1, 2000);
    String why = AdviceOverridden.why(typed);
    if (!typed.has("line") && !typed.has("item")) {
      typed.fault("item", "Give the code of what goes out, or choose what is handed back.");
    }
    return typed.sound()
        ? Optional.of(
            new ChangeKitCommand(
                loan,
                line == null ? null : line.longValue(),
                countBack,
                code == null ? null : new ItemAsked("item", code, count),
                why))
        : Optional.empty();
  }
}
