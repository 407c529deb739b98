package club.ascham.mechanics;

import java.util.List;

/**
 * What a measured distance does for each unit of work, as far as it was tried. Beyond that the
 * likeliest value stays, and the prior's spread comes back: nobody has seen this bow there.
 *
 * @param prior before anything was recorded
 * @param now after it was
 */
record Response(Posterior prior, Posterior now) {
  static Response of(Posterior prior, List<Run> runs) {
    return new Response(prior, prior.after(runs));
  }

  /**
   * The same of what can only rise: readings that say otherwise were of something else, and leave a
   * fifth of the prior's mean.
   */
  static Response rising(Posterior prior, List<Run> runs) {
    Posterior now = prior.after(runs);
    double least = prior.mean() / 5;
    return new Response(
        prior, now.mean() >= least ? now : new Posterior(least, now.sd(), now.shown()));
  }

  /**
   * The change that so much work makes, in units of the work's own scale and with its sign.
   *
   * @param tried as much of it as lies where this bow was tried
   */
  Posterior change(double work, double tried) {
    return new Posterior(
        now.mean() * work,
        now.sd() * Math.abs(tried) + prior.sd() * Math.abs(work - tried),
        now.shown());
  }
}
