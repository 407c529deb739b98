package club.ascham.fleet;

import club.ascham.askback.Asked;
import club.ascham.form.Words;
import club.ascham.standing.State;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The committee's page as records: every figure is the size of a list that can be opened.
 *
 * @param courseDay the evening that a course next week is reckoned for
 */
public record Fleet(
    LocalDate today,
    LocalDate courseDay,
    List<FleetRig> rigs,
    List<OpenLoan> loansOverdue,
    List<DueNow> inspectionsOverdue,
    List<DueNow> stringsDue,
    List<OpenWithdrawal> withdrawals,
    List<Asked> askBack) {

  /** What one sheet of paper has room for beside the figures. */
  private static final int SHOWN_AT_MOST = 5;

  private static final List<State> STATES =
      List.of(
          State.READY, State.ON_LOAN, State.TO_BE_CHECKED, State.IN_THE_WORKSHOP, State.WITHDRAWN);

  /** Rigs of one length, weight or hand: how many are ready, of how many. */
  public record Line(String said, Figure ready, Figure all) {}

  /** Rigs of one length for a course, by hand. */
  public record CourseLine(String word, String said, List<CourseCell> cells) {}

  /** What there is for one hand at one length. */
  public record CourseCell(String hand, Figure asItIs, Figure afterWork) {
    public boolean isNone() {
      return asItIs.isNone() && afterWork.isNone();
    }
  }

  private Figure count(RigChoice choice, String word, String said) {
    return new Figure(word, said, choice.of(rigs).size(), choice.query());
  }

  public Figure all() {
    return count(RigChoice.ALL, "all", "rigs in all");
  }

  public List<Figure> byState() {
    return STATES.stream()
        .map(s -> count(RigChoice.ALL.and(Trait.STATE, s.word()), s.word(), s.said()))
        .toList();
  }

  public List<Line> byLength() {
    return lines(Trait.LENGTH, lengths());
  }

  public List<Line> byWeight() {
    return lines(
        Trait.WEIGHT,
        Stream.concat(
                Arrays.stream(WeightBand.values()).map(WeightBand::word), Stream.of(Trait.UNKNOWN))
            .toList());
  }

  public List<Line> byHand() {
    return lines(Trait.HAND, hands());
  }

  public Figure loansOverdueFigure() {
    return FleetList.LOANS_OVERDUE.figure(loansOverdue.size());
  }

  public Figure inspectionsOverdueFigure() {
    return FleetList.INSPECTIONS_OVERDUE.figure(inspectionsOverdue.size());
  }

  public Figure stringsDueFigure() {
    return FleetList.STRINGS_DUE.figure(stringsDue.size());
  }

  public Figure withdrawalsFigure() {
    return FleetList.WITHDRAWALS.figure(withdrawals.size());
  }

  public Figure askBackFigure() {
    return FleetList.ASK_BACK.figure(Asked.things(askBack));
  }

  public Shown<OpenWithdrawal> withdrawalsShown() {
    return Shown.of(withdrawals, SHOWN_AT_MOST);
  }

  public Shown<DueNow> inspectionsShown() {
    return Shown.of(inspectionsOverdue, SHOWN_AT_MOST);
  }

  /** How many of the strings due are overdue already. */
  public long stringsOverdue() {
    return stringsDue.stream().filter(string -> string.dueOn().isBefore(today)).count();
  }

  private Figure course(Fielding.Chance chance) {
    String word = Words.of(chance);
    return count(RigChoice.ALL.and(Trait.COURSE, word), word, Words.said(chance));
  }

  public Figure asTheyAre() {
    return course(Fielding.Chance.AS_IT_IS);
  }

  public Figure afterWork() {
    return course(Fielding.Chance.AFTER_WORK);
  }

  public Figure notCounted() {
    return course(Fielding.Chance.NOT);
  }

  public List<Figure> workFirst() {
    return because(Fielding.Chance.AFTER_WORK);
  }

  public List<Figure> hindered() {
    return because(Fielding.Chance.NOT);
  }

  /** What makes or hinders each chance, where any rig is so. */
  private List<Figure> because(Fielding.Chance chance) {
    return Arrays.stream(Fielding.values())
        .filter(fielding -> fielding.chance() == chance)
        .map(f -> count(RigChoice.ALL.and(Trait.BECAUSE, Words.of(f)), Words.of(f), f.said()))
        .filter(figure -> !figure.isNone())
        .toList();
  }

  /** The hands that any rig can be counted on for, in the order of the table's columns. */
  public List<String> courseHands() {
    return hands().stream()
        .filter(hand -> rigs.stream().anyMatch(r -> fielded(r) && Trait.HAND.of(r).equals(hand)))
        .toList();
  }

  public List<CourseLine> courseLines() {
    return lengths().stream()
        .filter(
            length -> rigs.stream().anyMatch(r -> fielded(r) && Trait.LENGTH.of(r).equals(length)))
        .map(
            length ->
                courseLine(
                    length, Trait.LENGTH.said(length), RigChoice.ALL.and(Trait.LENGTH, length)))
        .toList();
  }

  public CourseLine courseTotal() {
    return courseLine("all", "all", RigChoice.ALL);
  }

  private CourseLine courseLine(String word, String said, RigChoice of) {
    return new CourseLine(
        word,
        said,
        courseHands().stream().map(hand -> courseCell(hand, of.and(Trait.HAND, hand))).toList());
  }

  private CourseCell courseCell(String hand, RigChoice of) {
    return new CourseCell(
        hand, chance(of, Fielding.Chance.AS_IT_IS), chance(of, Fielding.Chance.AFTER_WORK));
  }

  private Figure chance(RigChoice of, Fielding.Chance chance) {
    String word = Words.of(chance);
    return count(of.and(Trait.COURSE, word), word, Words.said(chance));
  }

  private static boolean fielded(FleetRig rig) {
    return rig.fielding().chance() != Fielding.Chance.NOT;
  }

  private List<Line> lines(Trait trait, List<String> words) {
    List<Line> lines = new ArrayList<>();
    for (String word : words) {
      RigChoice these = RigChoice.ALL.and(trait, word);
      String said = trait.said(word);
      Figure all = count(these, word, said);
      if (!all.isNone()) {
        String ready = State.READY.word();
        lines.add(new Line(said, count(these.and(Trait.STATE, ready), word, said), all));
      }
    }
    return lines;
  }

  /** The lengths there are, shortest first, those not known last. */
  private List<String> lengths() {
    return rigs.stream()
        .map(FleetRig::bowLengthIn)
        .distinct()
        .sorted(Comparator.nullsLast(Comparator.naturalOrder()))
        .map(length -> length == null ? Trait.UNKNOWN : String.valueOf(length))
        .toList();
  }

  private static List<String> hands() {
    return List.of("right", "left", Trait.EITHER, Trait.UNKNOWN);
  }
}
