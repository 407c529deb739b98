package club.ascham.bow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which rigs suit an archer, best first, and why the others do not. */
public final class Suitability {
  /** Published tables differ by this much, so a bow is too short only beyond it. */
  private static final int TABLES_DIFFER_IN = 2;

  private static final double ROUNDING_LB = 1e-9;

  /** Why a short bow is refused where a long one passes: common practice. */
  private static final String SHORT_BOW =
      " Drawn so far, a short bow bends more than its limbs are made for, grows heavy at the end of"
          + " the draw and pinches the fingers.";

  private static final String LONG_BOW =
      " A bow too long does no harm: it pulls no heavier at a short draw and is easy on the fingers,"
          + " but there is more of it to hold and its arrows fly slower.";

  private Suitability() {}

  /**
   * Sorts rigs for an archer. A rig is left out for another hand, parts that do not fit, a length
   * more than 2 in below the published row (bow-length tables differ by that much), or a weight
   * above the archer's ceiling. The others are ranked by points (judged): 1 for each inch from the
   * preferred length and 2 more for each outside the published row; 3 for each pound above the
   * weight aimed for, 2 for each below; 2 where the estimate's upper end passes the ceiling; 3
   * where the tiller can't be set to someone past the beginners' course. Equals keep the order they
   * were handed in, the one nearer to the weight aimed for first.
   */
  public static <T> Ranking<T> rank(NewcomerAnswers answers, List<Candidate<T>> candidates) {
    NewcomerFit fit = Newcomer.fit(answers);
    List<Suited<T>> suited = new ArrayList<>();
    List<Unsuited<T>> unsuited = new ArrayList<>();
    for (Candidate<T> candidate : candidates) {
      List<String> never = neverFits(answers, candidate);
      if (!never.isEmpty()) {
        unsuited.add(new Unsuited<>(candidate.rig(), never, false, false));
        continue;
      }
      WeightOnFingers weight =
          FingerWeight.of(candidate.spec(), candidate.setUp(), answers.drawIn());
      int bowIn = candidate.spec().bowLengthIn().orElseThrow();
      List<String> against = against(fit, weight, bowIn);
      if (against.isEmpty()) {
        suited.add(suited(answers, fit, candidate, weight, bowIn));
      } else {
        Heaviness heaviness = fit.ceiling().of(weight);
        unsuited.add(
            new Unsuited<>(
                candidate.rig(),
                against,
                heaviness != Heaviness.REFUSED,
                heaviness == Heaviness.WITH_A_COACH));
      }
    }
    suited.sort(
        Comparator.<Suited<T>>comparingInt(Suited::misfitScore)
            .thenComparingDouble(one -> Math.abs(one.weight().lb() - fit.aimLb())));
    return new Ranking<>(suited, unsuited);
  }

  private static List<String> neverFits(NewcomerAnswers answers, Candidate<?> candidate) {
    List<String> reasons = new ArrayList<>();
    RigSpec spec = candidate.spec();
    if (spec.hand() != null && spec.hand() != answers.hand()) {
      reasons.add(
          switch (spec.hand()) {
            case RIGHT -> "It is for drawing with the right hand.";
            case LEFT -> "It is for drawing with the left hand.";
          });
    }
    Compatibility.misfits(spec).forEach(misfit -> reasons.add(misfit.reason()));
    if (reasons.isEmpty() && !FingerWeight.reckons(spec, candidate.setUp(), answers.drawIn())) {
      reasons.add(
          "Its weight can't be reckoned: check the marked weight, the draw it was marked at and the"
              + " brace height.");
    }
    return reasons;
  }

  private static List<String> against(NewcomerFit fit, WeightOnFingers weight, int bowIn) {
    List<String> reasons = new ArrayList<>();
    if (bowIn < fit.bowFromIn() - TABLES_DIFFER_IN) {
      reasons.add(
          "Too short: "
              + bowIn
              + " in, where "
              + fit.bowFromIn()
              + " in is the least the table gives for this draw."
              + SHORT_BOW);
    }
    String heavy = fit.ceiling().against(weight);
    if (!heavy.isEmpty()) {
      reasons.add(heavy);
    }
    return reasons;
  }

  private static <T> Suited<T> suited(
      NewcomerAnswers answers,
      NewcomerFit fit,
      Candidate<T> candidate,
      WeightOnFingers weight,
      int bowIn) {
    List<String> why = new ArrayList<>();
    int points = length(fit, bowIn, why) + weight(fit, weight, why);
    if (answers.experience() != Experience.BEGINNER && !candidate.spec().tillerAdjusts()) {
      points += 3;
      why.add("Its tiller can't be set to the archer.");
    }
    return new Suited<>(candidate.rig(), weight, why, points);
  }

  private static int length(NewcomerFit fit, int bowIn, List<String> why) {
    int offIn = Math.abs(bowIn - fit.bowPreferredIn());
    int outsideIn = Math.max(0, Math.max(fit.bowFromIn() - bowIn, bowIn - fit.bowToIn()));
    if (offIn == 0) {
      why.add(bowIn + " in is the length preferred for this draw.");
    } else if (outsideIn == 0) {
      why.add(bowIn + " in suits this draw; " + fit.bowPreferredIn() + " in is preferred.");
    } else {
      why.add(
          bowIn
              + " in is "
              + outsideIn
              + " in "
              + (bowIn < fit.bowFromIn() ? "shorter" : "longer")
              + " than the table gives for this draw."
              + (bowIn < fit.bowFromIn() ? " Published tables differ by so much." : LONG_BOW));
    }
    return offIn + 2 * outsideIn;
  }

  private static int weight(NewcomerFit fit, WeightOnFingers weight, List<String> why) {
    why.add(
        String.format(
            Locale.ROOT,
            "About %.1f lb on these fingers (%.1f to %.1f), where %.0f lb is aimed for.",
            weight.lb(),
            weight.lowLb(),
            weight.highLb(),
            fit.aimLb()));
    double overLb = weight.lb() - fit.aimLb();
    int points = (int) Math.round(overLb > 0 ? 3 * overLb : -2 * overLb);
    if (weight.lb() < fit.leastLb()) {
      why.add(
          String.format(
              Locale.ROOT, "Lighter than usual: %.0f lb is the least advised.", fit.leastLb()));
    }
    if (weight.highLb() > fit.ceiling().freeLb() + ROUNDING_LB) {
      points += 2;
      why.add(
          String.format(
              Locale.ROOT,
              "It may weigh more than the %.0f lb that need no reason: weigh it on a bow scale.",
              fit.ceiling().freeLb()));
    }
    return points;
  }
}
