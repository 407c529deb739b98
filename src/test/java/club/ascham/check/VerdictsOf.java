package club.ascham.check;

import club.ascham.store.Rows;
import club.ascham.verdict.RandomVerdicts;

/** What checks decided, of a file that no server has open. */
public final class VerdictsOf {
  private VerdictsOf() {}

  public static Verdicts file(Rows rows) {
    return new Verdicts(rows);
  }

  /** Keeps with a check what some seed lays out. */
  public static boolean keep(Rows rows, long check, long seed) {
    return RandomVerdicts.of(seed)
        .map(
            verdict -> {
              file(rows).keep(check, verdict.given());
              return true;
            })
        .orElse(false);
  }
}
