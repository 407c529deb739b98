package club.ascham.receive;

import club.ascham.check.StrangerBack;
import club.ascham.form.Typed;
import club.ascham.loan.LoanLine;
import club.ascham.report.PartChoice;
import club.ascham.report.Telling;
import club.ascham.time.Evening;
import club.ascham.units.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * A receipt as a person gives it: the lines of the loan, what was told, and the deposit.
 *
 * @param happened when it came back; a late entry lies in the past
 * @param told what was told of the bow
 * @param stranger a part that is on the bow and not on the list; null: none
 * @param depositKept what of the deposit is kept; zero: all of it goes back
 */
record ReceiptDetails(
    List<LineBack> lines,
    Instant happened,
    Telling told,
    Money depositKept,
    String depositKeptWhy,
    StrangerBack stranger) {
  private static final int LONGEST_WORDS = 400;

  /** The moments a receipt may have happened at. */
  record When(Instant issued, Instant now, ZoneId zone) {}

  /**
   * Reads {@code back-LINE} (ticked: it is here), {@code damage-LINE} (words), {@code count-LINE}
   * (arrows), what was told (as everywhere), {@code depositKept}, {@code depositKeptWhy} and {@code
   * on} (a day before today, for paper typed in later). {@code allBack} ticks every line.
   */
  static ReceiptDetails parse(
      Typed typed,
      List<LoanLine> out,
      StrangerBack stranger,
      Money deposit,
      Currency currency,
      When when) {
    List<LineBack> lines = new ArrayList<>();
    boolean all = typed.ticked("allBack");
    for (LoanLine line : out) {
      lines.add(LineBack.read(typed, line, all || typed.ticked("back-" + line.id())));
    }
    if (lines.stream().noneMatch(LineBack::back)) {
      typed.fault("lines", "Tick what is here. If nothing came back, there is nothing to receive.");
    }
    Money kept = typed.money("depositKept", currency);
    if (kept != null && kept.compareTo(deposit) > 0) {
      typed.fault(
          "depositKept", "No more can be kept than the deposit, " + deposit.format(currency) + ".");
    }
    if (kept != null && kept.minor() > 0 && !lines.stream().allMatch(LineBack::back)) {
      typed.fault(
          "depositKept",
          "Something is still out: say what is kept when the last of it comes back.");
    }
    String why = typed.reasonIfAny("depositKeptWhy", LONGEST_WORDS);
    if (kept != null && kept.minor() > 0 && why == null) {
      typed.fault("depositKeptWhy", "Why is it kept? The borrower will ask.");
    }
    return new ReceiptDetails(
        lines,
        happened(typed, when),
        Telling.parse(typed, Telling.Fields.PLAIN, choices(out), Telling.WordsAlone.SOMETHING_ELSE),
        kept == null ? Money.ZERO : kept,
        why,
        stranger);
  }

  /** What something may be told of. */
  static List<PartChoice> choices(List<LoanLine> out) {
    return out.stream()
        .map(line -> new PartChoice(line.item(), line.bareCode(), line.kind().name(), line.rig()))
        .toList();
  }

  private static Instant happened(Typed typed, When when) {
    Instant evening = Evening.read(typed, when.now(), when.zone());
    if (evening == null) {
      return when.now();
    }
    LocalDate on = LocalDate.ofInstant(evening, when.zone());
    if (on.isBefore(LocalDate.ofInstant(when.issued(), when.zone()))) {
      typed.fault("on", "That is before it was lent.");
    }
    // What was lent late that evening came back after.
    return evening.isBefore(when.issued()) ? when.issued() : evening;
  }
}
