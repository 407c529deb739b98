package club.ascham.life;

import club.ascham.life.LifeDesk.Group;
import club.ascham.life.LifeDesk.Lasting;
import club.ascham.life.LifeDesk.Ruled;
import club.ascham.life.PartLife.Measure;
import club.ascham.statistics.Interval;
import club.ascham.statistics.KaplanMeier;
import club.ascham.statistics.WeibullFit;
import java.util.Locale;

/** How long parts last, as people say it. */
final class LifeWords {
  private static final double LIKELY = 0.9;

  private LifeWords() {}

  static String counts(Group group) {
    return "%d in all: %d failed, %d in use, %d left otherwise"
        .formatted(group.parts().size(), group.failed(), group.inUse(), group.leftOtherwise());
  }

  /** Of a fitted life, in two sentences. */
  static String life(WeibullFit fit, Measure measure) {
    return "Half last %s %s; one in ten fails by %s. %s"
        .formatted(
            range(fit.quantile(0.5, LIKELY)),
            measure.said(),
            whole(fit.quantile(0.1, LIKELY).estimate()),
            wear(fit));
  }

  private static String wear(WeibullFit fit) {
    Interval shape = fit.shape(LIKELY);
    if (shape.low() > 1) {
      return "They wear out: the older, the likelier to fail.";
    }
    return shape.high() < 1
        ? "The young ones fail first: look at how they are made or fitted."
        : "Whether age wears them can’t be told yet.";
  }

  /** One line for the list of kinds. */
  static String line(Lasting lasting) {
    return lasting.together() == null
        ? lasting.refusal()
        : life(lasting.together(), lasting.measure());
  }

  /** Where the curve rests on few; empty where it does not. */
  static String few(KaplanMeier curve, Measure measure) {
    long few = curve.steps().stream().filter(KaplanMeier.Step::few).count();
    if (few == 0) {
      return "";
    }
    String rests =
        curve.fewFrom() == null
            ? "%d of the %d steps rest".formatted(few, curve.steps().size())
            : "From %s %s on the steps rest".formatted(whole(curve.fewFrom()), measure.said());
    return "%s on fewer than %d parts: one that fails moves the curve far. Do not lean on what is dashed; where few begins is our choice."
        .formatted(rests, KaplanMeier.FEW);
  }

  static String proposal(Ruled ruled) {
    int inForce = ruled.rule().everyDays();
    Proposal proposal = ruled.proposal();
    if (proposal instanceof Proposal.Shorten to) {
      return "Replacing after %d days instead of %d would cost %d %% less in the long run%s."
          .formatted(
              to.days(), inForce, Math.round(100 * to.saves()), between(to.low(), to.high()));
    }
    if (proposal instanceof Proposal.NotLonger to) {
      return "The record would bear %d days instead of %d%s. Statistics alone never lengthen an interval: it stays."
          .formatted(to.days(), inForce, between(to.low(), to.high()));
    }
    if (proposal instanceof Proposal.InspectInstead) {
      return "No age pays: they do not fail the more for being old. Inspect instead; the interval stays.";
    }
    return proposal instanceof Proposal.Untold untold
        ? untold.why() + " The interval the club began with stays: %d days.".formatted(inForce)
        : "The record agrees with %d days.".formatted(inForce);
  }

  /** What a shortened rule rests on, for its source. */
  static String source(Proposal.Shorten to, Ruled ruled, Lasting lasting, String day) {
    long parts = lasting.parts().size();
    long failed = lasting.parts().stream().filter(PartLife::failed).count();
    return "This club’s record on %s: %d of %d failed; %d days cost least%s, one that fails costing %s times one replaced in time."
        .formatted(
            day,
            failed,
            parts,
            to.days(),
            between(to.low(), to.high()),
            String.format(Locale.UK, "%.3g", ruled.failureTimes()));
  }

  static String between(Integer low, Integer high) {
    return low == null || high == null
        ? " (the best age is not well known yet)"
        : " (the best age lies between %d and %d, 9 times in 10)".formatted(low, high);
  }

  private static String range(Interval interval) {
    return "%s (%s to %s)"
        .formatted(whole(interval.estimate()), whole(interval.low()), whole(interval.high()));
  }

  static String whole(double number) {
    return String.format(Locale.UK, "%,d", Math.round(number));
  }
}
