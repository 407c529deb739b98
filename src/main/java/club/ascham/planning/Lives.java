package club.ascham.planning;

import club.ascham.life.LifeDesk;
import club.ascham.plan.Kind;
import club.ascham.plan.Lifetime;
import club.ascham.register.ItemKind;
import club.ascham.rules.PlanRules;
import club.ascham.statistics.WeibullFit;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.special.Gamma;

/** How long parts last: by the club's own record, and what is assumed where it says nothing. */
@ApplicationScoped
class Lives {
  /** A part that wears: the likelihood to fail rises in proportion to its age (judged). */
  private static final double SHAPE = 2;

  private static final double DAYS_A_YEAR = 365.25;

  private final LifeDesk desk;

  Lives(LifeDesk desk) {
    this.desk = desk;
  }

  /** Of the kinds of which the record tells a life. */
  Map<Kind, Lifetime> onRecord() {
    Map<Kind, Lifetime> lives = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      desk.inDays(ItemKind.valueOf(kind.name())).ifPresent(fit -> lives.put(kind, life(fit)));
    }
    return lives;
  }

  private static Lifetime life(WeibullFit fit) {
    return new Lifetime(
        fit.life().shape(),
        fit.life().scale(),
        "the club’s own record: %d of %d failed".formatted(fit.failures(), fit.parts()));
  }

  /**
   * @param onRecord null: the record tells none
   * @param everyDays after which such a part is replaced in any case; null: only when it fails
   * @return null: it is not thought to fail of itself
   */
  Lifetime of(Lifetime onRecord, PlanRules.Terms terms, PlanRules.Basis basis, Integer everyDays) {
    if (onRecord != null) {
      return onRecord;
    }
    if (everyDays == null) {
      return new Lifetime(
          SHAPE,
          terms.years() * DAYS_A_YEAR / Gamma.gamma(1 + 1 / SHAPE),
          "assumed: lasts %d years on average".formatted(terms.years()));
    }
    return basis.earlyFailurePercent() == 0
        ? null
        : Lifetime.failing(
            basis.earlyFailurePercent() / 100.0,
            everyDays,
            SHAPE,
            "assumed: replaced after %d days; %d %% fail before"
                .formatted(everyDays, basis.earlyFailurePercent()));
  }
}
