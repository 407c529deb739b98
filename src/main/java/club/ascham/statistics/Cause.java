package club.ascham.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What makes a bow's brace and tiller change of themselves. */
public enum Cause {
  /** Brace falls, tiller stays. */
  STRING_CREEPS,
  /** Tiller moves, brace moves a little. */
  BOLT_WALKS,
  /** Tiller moves, and brace by what no bolt explains. */
  LIMB;

  /**
   * A cause with its probability among those that were weighed.
   *
   * @param probability 0 to 1; what is left to 1 is something else, unlogged work above all
   */
  public record Likely(Cause cause, double probability) {}

  /** Judged: how often each is at work where a bow changed; the rest is something else. */
  private static final double CREEPS = 0.55;

  private static final double WALKS = 0.25;
  private static final double BENDS = 0.1;
  private static final double OTHER = 0.1;

  /** Judged: how far each moves brace and tiller, as standard deviations in mm. */
  private static final double CREEP_MM = 6;

  private static final double CREEP_TILLER_MM = 0.5;
  private static final double WALK_TILLER_MM = 4;
  private static final double WALK_SPREAD_MM = 2;
  private static final double WALK_BRACE_MM = 0.7;
  private static final double BEND_TILLER_MM = 5;
  private static final double BEND_SPREAD_MM = 3;
  private static final double BEND_BRACE_MM = 6;
  private static final double OTHER_MM = 8;

  /**
   * Which causes fit what was seen, likeliest first, by Bayes' rule for normal spreads. Empty where
   * something else fits better than each of them: brace that rises has no cause of its own.
   *
   * @param brace null: not measured (likewise {@code tiller}); at least one is
   * @param bolts whether limb bolts set the tiller of this bow
   */
  static List<Likely> ranked(Course.Shift brace, Course.Shift tiller, boolean bolts) {
    double creeps = CREEPS * falls(brace) * near(tiller, 0, CREEP_TILLER_MM);
    double walks =
        bolts
            ? WALKS
                * eitherWay(tiller, WALK_TILLER_MM, WALK_SPREAD_MM)
                * near(brace, 0, WALK_BRACE_MM)
            : 0;
    double bends =
        BENDS * eitherWay(tiller, BEND_TILLER_MM, BEND_SPREAD_MM) * near(brace, 0, BEND_BRACE_MM);
    double other = OTHER * near(brace, 0, OTHER_MM) * near(tiller, 0, OTHER_MM);
    double all = creeps + walks + bends + other;
    if (!(all > 0) || other >= Math.max(creeps, Math.max(walks, bends))) {
      return List.of();
    }
    List<Likely> ranked = new ArrayList<>();
    ranked.add(new Likely(STRING_CREEPS, creeps / all));
    ranked.add(new Likely(BOLT_WALKS, walks / all));
    ranked.add(new Likely(LIMB, bends / all));
    ranked.removeIf(likely -> likely.probability() < 0.01);
    ranked.sort(Comparator.comparingDouble(Likely::probability).reversed());
    return List.copyOf(ranked);
  }

  private static double near(Course.Shift shift, double mean, double sd) {
    return shift == null ? 1 : Normal.density(shift.mm(), mean, sd * sd + shift.variance());
  }

  private static double eitherWay(Course.Shift shift, double mm, double sd) {
    return (near(shift, mm, sd) + near(shift, -mm, sd)) / 2;
  }

  /** A fall of half-normal size: the normal density, and twice the chance that it was a fall. */
  private static double falls(Course.Shift shift) {
    if (shift == null) {
      return 1;
    }
    if (shift.mm() > 0) {
      return 0;
    }
    double whole = CREEP_MM * CREEP_MM + shift.variance();
    double standard = -shift.mm() * CREEP_MM / Math.sqrt(shift.variance() * whole);
    return 2 * Normal.density(shift.mm(), 0, whole) * Normal.cumulative(standard);
  }
}
