package club.ascham.planning;

import club.ascham.plan.Life;
import club.ascham.rules.PlanRules;
import jakarta.enterprise.context.ApplicationScoped;
import org.hipparchus.special.Gamma;

/**
 * How long parts last: what is assumed where the club's own record says nothing. The one place to
 * put a life fitted from the record in the stead of an assumption.
 */
@ApplicationScoped
class Lives {
  /** A part that wears: the likelihood to fail rises in proportion to its age (judged). */
  private static final double SHAPE = 2;

  private static final double DAYS_A_YEAR = 365.25;

  /**
   * @param everyDays after which such a part is replaced in any case; null: only when it fails
   * @return null: it is not thought to fail of itself
   */
  Life of(PlanRules.Terms terms, PlanRules.Basis basis, Integer everyDays) {
    if (everyDays == null) {
      return new Life(
          SHAPE,
          terms.years() * DAYS_A_YEAR / Gamma.gamma(1 + 1 / SHAPE),
          "assumed: lasts %d years on average".formatted(terms.years()));
    }
    return basis.earlyFailurePercent() == 0
        ? null
        : Life.failing(
            basis.earlyFailurePercent() / 100.0,
            everyDays,
            SHAPE,
            "assumed: replaced after %d days; %d %% fail before"
                .formatted(everyDays, basis.earlyFailurePercent()));
  }
}
