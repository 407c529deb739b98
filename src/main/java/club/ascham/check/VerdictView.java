package club.ascham.check;

import club.ascham.bow.Gauge;
import club.ascham.form.Words;
import club.ascham.rig.RigCard;
import club.ascham.standing.State;
import club.ascham.units.LengthText;
import club.ascham.web.Days;
import club.ascham.withdrawal.Withdrawals;
import java.util.List;

/**
 * A check with its verdict, as its page shows it.
 *
 * @param gauges empty where nothing was measured, or other figures are in force since
 * @param current whether nothing happened to the bow since
 * @param pair the adjustment that led to this check or followed it; null: none
 * @param before the check before that adjustment, where this one is its second measurement; null:
 *     none
 * @param withdrawn what this check took out of use
 * @param next the bow to be checked after this one; null: none waits
 * @param boltsHere whether this person may turn the bolts of this bow
 */
record VerdictView(
    RigCard card,
    Checks.Row check,
    VerdictWords words,
    List<Checks.SeenSign> signs,
    List<Gauge> gauges,
    State state,
    boolean current,
    Checks.Adjusted pair,
    Checks.Row before,
    List<Withdrawals.Row> withdrawn,
    Queue.Waiting next,
    int waiting,
    boolean boltsHere) {

  public String path() {
    return CheckPages.verdictPage(card.id(), check.id());
  }

  public String checkPath() {
    return CheckPages.page(card.id());
  }

  /** {@code R-0147-J, Tue 9 Jun 2026, 18:30, by volunteer}. */
  public String when(Days days) {
    return card.name() + ", " + days.moment(check.happenedAt()) + ", by " + check.by();
  }

  public String title() {
    return CheckDesk.capital(RecordCheck.said(check.verdict()));
  }

  public String kind() {
    return Words.of(check.verdict());
  }

  public boolean canBePutBack() {
    return current
        && check.isFit()
        && !check.isReleased()
        && (state == State.TO_BE_CHECKED || state == State.READY);
  }

  public boolean canBeAdjusted() {
    return current
        && check.verdict() == club.ascham.verdict.Verdict.Kind.ADJUST
        && state != State.IN_THE_WORKSHOP
        && state != State.WITHDRAWN;
  }

  /** Steps that this person can do alone; else the workshop comes first. */
  public boolean isForWorkshop() {
    return words.isForWorkshop();
  }

  public boolean advisesTwists() {
    return words.has(club.ascham.verdict.BenchStep.Key.TWISTS);
  }

  public boolean measuredAgain() {
    return before != null;
  }

  public String setUpWords() {
    return card.setUp() == null
        ? null
        : "brace %s from %s, upper %s, lower %s"
            .formatted(
                LengthText.both(card.setUp().brace()),
                BowWords.from(card.setUp().braceFrom()),
                LengthText.both(card.setUp().tillerUpper()),
                LengthText.both(card.setUp().tillerLower()));
  }

  /** The readings in words; null where nothing was measured. */
  public String readWords() {
    return said(check);
  }

  public String doneWords() {
    return pair.said();
  }

  public String beforeWords() {
    return before == null ? null : said(before);
  }

  private static String said(Checks.Row check) {
    return check
        .reading()
        .map(
            reading ->
                "brace %s, upper %s, lower %s, tiller %s"
                    .formatted(
                        LengthText.both(reading.brace()),
                        LengthText.both(reading.tillerUpper()),
                        LengthText.both(reading.tillerLower()),
                        LengthText.both(reading.tiller())))
        .orElse(null);
  }
}
