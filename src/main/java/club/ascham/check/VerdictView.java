package club.ascham.check;

import club.ascham.bow.Gauge;
import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import club.ascham.form.Words;
import club.ascham.report.Report;
import club.ascham.rig.RigCard;
import club.ascham.rig.Trends;
import club.ascham.standing.State;
import club.ascham.statistics.Drift;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.upkeep.Work;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Unstrung;
import club.ascham.verdict.Verdict;
import club.ascham.web.Days;
import club.ascham.withdrawal.Withdrawals;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
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
 * @param expected what was to be expected of the adjustment before this measurement
 * @param next the bow to be checked after this one; null: none waits
 * @param boltsHere whether this person may turn the bolts of this bow
 * @param learnt what its adjustments have shown, where this check is a second measurement
 * @param decides whether this person answers or decides what stands against a bow
 * @param kept it is kept as it is after an accident
 */
record VerdictView(
    RigCard card,
    Checks.Row check,
    Given given,
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
    List<Remark> expected,
    Queue.Waiting next,
    int waiting,
    boolean boltsHere,
    List<String> learnt,
    boolean decides,
    boolean kept) {

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
    if (unstrung() && check.verdict() != Verdict.Kind.WITHDRAW && !answerFirst()) {
      return "Leave it unstrung";
    }
    if (staysIn()) {
      return "Readings fine; stays in: " + against.of(Weight.BLOCKS).get(0).brief();
    }
    return CheckDesk.capital(given.said()) + (isChanging() ? ", but its readings change" : "");
  }

  /** Within their bands, and moved by more than readers differ: the headline owns to it. */
  private boolean isChanging() {
    return current && check.isFit() && trend.answer() == Drift.Answer.CHANGING;
  }

  public String kind() {
    boolean isStop = staysIn() || unstrung() || given.has(BenchStep.Key.RELEASE);
    return Words.of(isStop ? Verdict.Kind.WITHDRAW : check.verdict());
  }

  /** Nobody strings it, whatever this check advised before that was known. */
  public boolean unstrung() {
    return current && against.staysUnstrung();
  }

  /** The steps of this check, or of the danger that stands against its bow by now. */
  public List<BenchStep> steps() {
    if (!against.staysUnstrung()) {
      return given.steps();
    }
    // Advice of a bow that nobody strings any more is not shown; a withdrawal says its own work.
    boolean told = against.dangers().stream().anyMatch(one -> one.matter() == Matter.REPORTED);
    boolean standing = against.dangers().stream().anyMatch(one -> one.matter() != Matter.REPORTED);
    if (!current) {
      return given.waits() ? given.steps() : List.of();
    }
    return check.verdict() != Verdict.Kind.WITHDRAW
        ? Unstrung.steps(told, standing, !decides && !kept)
        : List.of();
  }

  /** What this person does next with a bow that stays unstrung: the place where that is decided. */
  public Concern nextDanger() {
    return unstrung() && decides ? against.dangers().get(0) : null;
  }

  /** The same where others decide: it goes to the workshop, unless it waits there already. */
  public boolean goesToWorkshop() {
    return unstrung() && !decides && !kept && !inWorkshop();
  }

  /** Whether this page has a press of its own: the next bow comes after it. */
  public boolean hasPress() {
    return canBePutBack() || canBeAdjusted() || nextDanger() != null || goesToWorkshop();
  }

  public boolean inWorkshop() {
    return against.has(Matter.NOT_SET_UP);
  }

  /** The check found nothing, and something else keeps the bow in. */
  public boolean staysIn() {
    return check.isFit() && against.blocks();
  }

  public boolean canBePutBack() {
    return current
        && check.isFit()
        && !check.isReleased()
        && open.isEmpty()
        && !unstrung()
        && (state == State.TO_BE_CHECKED || state == State.READY);
  }

  /** Nothing is adjusted: somebody answers what was told, and the bow is checked again. */
  public boolean answerFirst() {
    return given.has(BenchStep.Key.ANSWER_TOLD);
  }

  /** The same, of what was told or of what is withdrawn. */
  public boolean waits() {
    return given.waits();
  }

  public boolean canBeAdjusted() {
    return current
        && !waits()
        && !unstrung()
        && check.verdict() == Verdict.Kind.ADJUST
        && state != State.IN_THE_WORKSHOP
        && state != State.WITHDRAWN;
  }

  /** Else its steps are a mere look, after which the readings go on. */
  public boolean adjusts() {
    return given.adjusts();
  }

  /** It ends here for this person: the workshop goes on. */
  public boolean isForWorkshop() {
    return given.has(BenchStep.Key.TO_WORKSHOP);
  }

  /** Where another string is fitted, which asks for its code; null: none is. */
  public String otherString() {
    return given.has(BenchStep.Key.OTHER_STRING) && card.string() != null
        ? "/upkeep/" + card.string().code() + "/" + Work.STRING_REPLACEMENT.word()
        : null;
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
    Reading was = before == null ? Reading.NOTHING : before.reading().orElse(Reading.NOTHING);
    Reading setUp = Reading.of(card.setUp());
    BiFunction<String, Function<Reading, Length>, Distance> distance =
        (what, of) ->
            new Distance(
                what,
                Figure.of(of.apply(was)),
                Figure.of(of.apply(now.get())),
                Figure.of(of.apply(setUp)));
    return List.of(
        distance.apply("Brace", Reading::brace),
        distance.apply("Upper", Reading::tillerUpper),
        distance.apply("Lower", Reading::tillerLower),
        distance.apply("Tiller", Reading::tiller));
  }

  public String doneWords() {
    return pair.said();
  }
}
