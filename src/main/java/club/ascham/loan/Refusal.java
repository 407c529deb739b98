package club.ascham.loan;

import club.ascham.form.Typed;
import java.util.List;

/**
 * Why a loan can't be made or changed so, and what would make it possible.
 *
 * @param field where the answer is that stands in the way
 */
public record Refusal(String field, String message) {
  /** Puts each refusal at its field. */
  public static void at(Typed typed, List<Refusal> refusals) {
    refusals.forEach(refusal -> typed.fault(refusal.field(), refusal.message()));
  }
}
