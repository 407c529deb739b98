package club.ascham.changes;

import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.LendingTerms;
import club.ascham.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Things of a loan that are lost.
 *
 * @param words how it happened; null: not said
 * @param depositBack what of the deposit is given back if nothing is out any more; null: nothing
 */
public record LostCommand(LoanId loan, List<Long> lines, String words, Money depositBack) {
  private static final String LINE = "line-";

  /** Each lost line is a ticked field {@code line-ID}. */
  public static Optional<LostCommand> parse(LoanId loan, Typed typed, LendingTerms terms) {
    List<Long> lost =
        typed.all().keySet().stream()
            .filter(field -> field.matches(LINE + "\\d{1,12}") && typed.ticked(field))
            .map(field -> Long.parseLong(field.substring(LINE.length())))
            .sorted()
            .collect(Collectors.toList());
    if (lost.isEmpty()) {
      typed.fault("lines", "Tick what is lost.");
    }
    String words = typed.text("words", 500);
    Money back = typed.money("depositBack", terms.currency());
    return typed.sound()
        ? Optional.of(new LostCommand(loan, List.copyOf(lost), words, back))
        : Optional.empty();
  }
}
