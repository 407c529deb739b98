package club.ascham.plan;

/**
 * One possible course of the 24 months, week by week: what fails is replaced, then the week's hours
 * go to the work that is due, for safety first. A week that will be too full is relieved beforehand
 * by {@link Levelling}. One object serves any number of replications, one after another; nothing is
 * made in between.
 *
 * <p>Approximations: work begun may be finished another week; repairs take a week's hours first; a
 * part that needs its lead time is fitted at the club's next evening, a week later.
 */
final class Replication {
  private static final int WEEK = Calendar.DAYS_A_WEEK;

  private final Numbers of;
  private final int weeks;
  private final Buckets failures;
  private final Buckets work;
  private final Levelling levelling;
  private final double[] failsOn;
  private final double[] due;
  private final int[] left;
  private final int[] spares;
  private final int[] scratch;
  private final int[] outUntil;
  private Chance chance;
  private Diary diary;
  private int repairs;

  /** What happened in the course just reckoned. */
  final Happened happened;

  Replication(Numbers of) {
    this.of = of;
    weeks = of.calendar.weeks();
    failures = new Buckets(of.parts, weeks);
    work = new Buckets(of.routines, weeks + Levelling.AHEAD + 1);
    levelling = new Levelling(of.slackWeeks, of.minutesAWeek, weeks);
    failsOn = new double[of.parts];
    due = new double[of.routines];
    left = new int[of.routines];
    spares = new int[of.spares.length];
    scratch = new int[Math.max(of.routines, of.parts)];
    outUntil = new int[of.rigs];
    happened = new Happened(weeks, of.alike.size());
  }

  /** Told of each piece of work, for the list that people work by. */
  interface Diary {
    /**
     * @param week in which it is finished; negative: the hours did not suffice by the week it was
     *     due in, and it is finished some time later
     */
    void work(int routine, double dueDay, int week);
  }

  void run(Chance withChance, Diary into) {
    chance = withChance;
    diary = into;
    repairs = 0;
    failures.clear();
    work.clear();
    levelling.clear();
    happened.clear();
    System.arraycopy(of.spares, 0, spares, 0, spares.length);
    System.arraycopy(of.outForDays, 0, outUntil, 0, outUntil.length);
    for (int p = 0; p < of.parts; p++) {
      fails(p, chance.lasts(of.shape[p], of.scale[p], of.hazardSoFar[p], of.age[p]), 0);
    }
    for (int r = 0; r < of.routines; r++) {
      plan(r, of.firstDue(r, chance.usage()), 0);
    }
    for (int w = 0; w < weeks; w++) {
      week(w);
    }
  }

  private void week(int w) {
    for (int p = failures.any(w); p >= 0; p = failures.any(w)) {
      fail(p);
    }
    int hours = of.minutesAWeek;
    int forRepairs = Math.min(hours, repairs);
    repairs -= forRepairs;
    int free = hours - forRepairs;
    int unused = serve(w, false, serve(w, true, free));
    happened.minutes[w] = hours - unused;
    countOut(w);
    carryOver(w);
  }

  /** A class of work in one week: what is due, then what later weeks have no room for. */
  private int serve(int w, boolean safety, int free) {
    int ahead = levelling.toPull(w, safety);
    int count = work.copy(w, scratch);
    for (int i = 0; i < count && free > 0; i++) {
      if (of.routine[scratch[i]].safety() == safety && work.weekOf(scratch[i]) == w) {
        free -= give(scratch[i], w, free);
      }
    }
    int mayPull = Math.min(free, ahead);
    for (int u = w + 1; u <= w + Levelling.AHEAD && mayPull > 0; u++) {
      count = work.copy(u, scratch);
      for (int i = 0; i < count && mayPull > 0; i++) {
        int r = scratch[i];
        if (of.routine[r].safety() == safety
            && work.weekOf(r) == u
            && of.slackWeeks[of.slack[r]] >= u - w) {
          int given = give(r, w, mayPull);
          mayPull -= given;
          free -= given;
        }
      }
    }
    return free;
  }

  /** Works on a routine for so many minutes at most; answers how many it took. */
  private int give(int r, int w, int free) {
    int minutes = Math.min(free, left[r]);
    left[r] -= minutes;
    levelling.add(work.weekOf(r), of.slack[r], of.routine[r].safety(), -minutes);
    if (left[r] == 0) {
      finish(r, w);
    }
    return minutes;
  }

  private void finish(int r, int w) {
    if (diary != null && weekOf(due[r]) >= w) {
      diary.work(r, due[r], w);
    }
    work.remove(r);
    // Done on the day it is due, or as near to it as the week lies.
    double day = Math.max((double) w * WEEK, Math.min(due[r], w * WEEK + WEEK - 1));
    if (of.routine[r].replaces()) {
      int p = of.partOf[r];
      happened.replaced(of.kind[p], month(day), true);
      buy(p, Math.max(0, day - of.leadDays[of.kind[p]]));
      renew(p, day, w + 1);
    } else {
      plan(r, of.dueAfter(r, day, chance.usage()), w + 1);
    }
  }

  private void fail(int p) {
    double day = failsOn[p];
    failures.remove(p);
    int kind = of.kind[p];
    happened.replaced(kind, month(day), false);
    happened.failed(month(day), of.besidePart[kind]);
    int wait = buy(p, day) ? of.leadDays[kind] : 0;
    repairs += of.fitMinutes[kind];
    if (of.rig[p] >= 0) {
      outUntil[of.rig[p]] = Math.max(outUntil[of.rig[p]], (int) day + wait + WEEK);
    }
    renew(p, day + wait, (int) (day / WEEK));
  }

  /** Takes a spare, or buys one on the given day: then the answer is true. */
  private boolean buy(int p, double onDay) {
    int group = of.group[p];
    if (spares[group] > 0) {
      spares[group]--;
      return false;
    }
    happened.bought(group, month(onDay), of.price[of.kind[p]]);
    return true;
  }

  /** A new part serves from the given day on; its routines begin anew. */
  private void renew(int p, double day, int notBefore) {
    fails(p, day + chance.lasts(of.shape[p], of.scale[p], 0, 0), notBefore);
    for (int r = of.firstRoutine[p]; r < of.firstRoutine[p + 1]; r++) {
      withdraw(r);
      plan(r, of.dueAfter(r, day, chance.usage()), notBefore);
    }
  }

  private void fails(int p, double day, int notBefore) {
    failsOn[p] = day;
    double week = Math.max(notBefore, Math.floor(day / WEEK));
    if (day < of.calendar.days() && week < weeks) {
      failures.put(p, (int) week);
    } else {
      failures.remove(p);
    }
  }

  private void plan(int r, double day, int notBefore) {
    due[r] = day;
    if (day >= (double) (weeks + Levelling.AHEAD) * WEEK) {
      return;
    }
    left[r] = of.routine[r].minutes();
    int week = Math.max(weekOf(day), notBefore);
    work.put(r, week);
    levelling.add(week, of.slack[r], of.routine[r].safety(), left[r]);
  }

  private void withdraw(int r) {
    if (work.weekOf(r) >= 0) {
      levelling.add(work.weekOf(r), of.slack[r], of.routine[r].safety(), -left[r]);
      work.remove(r);
    }
  }

  private static int weekOf(double day) {
    return Math.max(0, (int) (day / WEEK));
  }

  private int month(double day) {
    return of.calendar.monthOf((int) Math.min(day, of.calendar.days() - 1.0));
  }

  private void countOut(int w) {
    int out = 0;
    for (int until : outUntil) {
      if (until > w * WEEK) {
        out++;
      }
    }
    happened.out[w] = out;
  }

  /** What the week's hours did not suffice for is due at once in the next. */
  private void carryOver(int w) {
    int count = work.copy(w, scratch);
    for (int i = 0; i < count; i++) {
      int r = scratch[i];
      boolean safety = of.routine[r].safety();
      happened.late(w, left[r], safety);
      if (diary != null && weekOf(due[r]) == w) {
        diary.work(r, due[r], -1);
      }
      int rig = of.rig[of.partOf[r]];
      if (safety && rig >= 0) {
        outUntil[rig] = Math.max(outUntil[rig], (w + 1) * WEEK + 1);
      }
      levelling.add(w, of.slack[r], safety, -left[r]);
      levelling.add(w + 1, of.slack[r], safety, left[r]);
      work.put(r, w + 1);
    }
  }
}
