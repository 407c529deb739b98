package club.ascham.changes;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.DrawLength;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.Archer;
import club.ascham.loan.LendingTerms;
import club.ascham.rig.AdviceOverridden;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A loan to be kept longer.
 *
 * @param draw the draw length as it is now; null: not asked again
 * @param against why a bow outside the advised range stays out
 * @param version of the loan that the form was made from; null: not said
 */
public record ExtendCommand(
    LoanId loan, LocalDate dueOn, DrawLength draw, AgainstAdvice against, Integer version) {

  /**
   * As typed; empty when something is missing or wrong, which then stands at its field.
   *
   * @param due when it is due now
   */
  public static Optional<ExtendCommand> parse(
      LoanId loan, LocalDate due, boolean junior, Typed typed, LendingTerms terms) {
    LocalDate dueOn = LendingTerms.due(typed, terms.goesOnFrom(due));
    if (!typed.has("dueOn") && !typed.has("dueWeeks")) {
      typed.fault("dueOn", "Until when?");
    }
    if (dueOn != null && dueOn.isBefore(terms.today())) {
      typed.fault("dueOn", "That day is over already.");
    }
    if (dueOn != null && dueOn.isAfter(terms.today().plusDays(LendingTerms.LONGEST_DAYS))) {
      typed.fault("dueOn", "At most " + LendingTerms.LONGEST_DAYS + " days from today, please.");
    }
    boolean said = typed.has("drawLength") || typed.has("armSpan");
    DrawLength draw = null;
    if (said) {
      draw = Archer.draw(typed, terms.unit()).orElse(null);
    } else if (junior) {
      typed.fault("drawLength", "A junior grows: measure the draw again.");
    }
    AgainstAdvice against = AdviceOverridden.parse(typed);
    Integer version = typed.version().isPresent() ? typed.version().getAsInt() : null;
    return typed.sound()
        ? Optional.of(new ExtendCommand(loan, dueOn, draw, against, version))
        : Optional.empty();
  }
}
