package club.ascham.loan;

import club.ascham.id.LoanId;
import java.util.List;

/** What came of making or changing a loan. */
public sealed interface LoanOutcome {
  /**
   * It was done, now or by an earlier press of the same form.
   *
   * @param said what was done, for the person who did it
   */
  record Done(LoanId loan, String said) implements LoanOutcome {
    String page() {
      return "/loans/" + loan.value();
    }
  }

  /** Nothing was changed. */
  record Refused(List<Refusal> why) implements LoanOutcome {
    public Refused {
      why = List.copyOf(why);
    }
  }
}
