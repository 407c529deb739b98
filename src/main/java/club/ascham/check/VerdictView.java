package club.ascham.check;

import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.concern.Against;
import club.ascham.form.Words;
import club.ascham.report.Report;
import club.ascham.rig.RigCard;
import club.ascham.rig.Trends;
import club.ascham.standing.State;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Reading;
import club.ascham.web.Days;
import club.ascham.withdrawal.Withdrawals;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A check with its verdict, as its page shows it.
 *
 * @param gauges empty where nothing was measured, or other figures are in force since
 * @param trend how its readings go, with this check among them
 * @param against what stands against the bow now
 * @param open what was told of it and nobody has answered
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
    Trends.Shown trend,
    State state,
    Against against,
    List<Report> open,
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
    return answerFirst()
        ? "Answer what was told first"
        : CheckDesk.capital(RecordCheck.said(check.verdict()));
  }

  public String kind() {
    return Words.of(check.verdict());
  }

  public boolean canBePutBack() {
    return current
        && check.isFit()
        && !check.isReleased()
        && open.isEmpty()
        && (state == State.TO_BE_CHECKED || state == State.READY);
  }

  /** Nothing is adjusted: somebody answers what was told, and the bow is checked again. */
  public boolean answerFirst() {
    return words.has(BenchStep.Key.ANSWER_TOLD);
  }

  public boolean canBeAdjusted() {
    return current
        && !answerFirst()
        && check.verdict() == club.ascham.verdict.Verdict.Kind.ADJUST
        && state != State.IN_THE_WORKSHOP
        && state != State.WITHDRAWN;
  }

  /** Steps that this person can do alone; else the workshop comes first. */
  public boolean isForWorkshop() {
    return words.isForWorkshop();
  }

  public boolean measuredAgain() {
    return before != null;
  }

  /** One distance as it was, is, and was set up at; null where it is not known. */
  record Distance(String what, Figure before, Figure now, Figure setUp) {}

  /** A length in both units. */
  record Figure(String inches, String mm) {
    static Figure of(Length length) {
      return length == null
          ? null
          : new Figure(LengthText.inches(length), LengthText.wholeMm(length));
    }
  }

  /** Empty where nothing was measured. */
  public List<Distance> readings() {
    Optional<Reading> now = check.reading();
    if (now.isEmpty()) {
      return List.of();
    }
    SetUpFigures setUp = card.setUp();
    Optional<Reading> was = before == null ? Optional.empty() : before.reading();
    return List.of(
        distance("Brace", was, now.get(), Reading::brace, setUp == null ? null : setUp.brace()),
        distance(
            "Upper",
            was,
            now.get(),
            Reading::tillerUpper,
            setUp == null ? null : setUp.tillerUpper()),
        distance(
            "Lower",
            was,
            now.get(),
            Reading::tillerLower,
            setUp == null ? null : setUp.tillerLower()),
        distance("Tiller", was, now.get(), Reading::tiller, setUp == null ? null : setUp.tiller()));
  }

  private static Distance distance(
      String what, Optional<Reading> was, Reading now, Function<Reading, Length> of, Length setUp) {
    return new Distance(
        what, was.map(of).map(Figure::of).orElse(null), Figure.of(of.apply(now)), Figure.of(setUp));
  }

  public String doneWords() {
    return pair.said();
  }
}
