package club.ascham.loan;

import club.ascham.askback.Thing;
import club.ascham.askback.ThingJson;
import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Words;
import club.ascham.units.LengthText;
import club.ascham.units.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/** The shapes in which loans travel as JSON. */
final class LoanJson {
  private LoanJson() {}

  /** One page of loans. */
  record Page(List<Line> items, int page, int size, long total) {}

  /** A loan in a list; without {@code who} for the committee. */
  record Line(
      long id,
      String kind,
      String who,
      Long borrower,
      Instant issuedAt,
      LocalDate dueOn,
      boolean open,
      boolean overdue,
      int linesOut,
      int lines,
      List<String> bows,
      List<ConcernJson> concerns) {
    static Line of(LoanRow row, Against against, boolean names, LocalDate today) {
      return new Line(
          row.id().value(),
          Words.of(row.kind()),
          names ? row.who() : null,
          names ? row.borrower() : null,
          row.issuedAt(),
          row.dueOn(),
          row.isOpen(),
          row.isOverdue(today),
          row.linesOut(),
          row.lines(),
          row.bows(),
          ConcernJson.of(against));
    }
  }

  /**
   * One loan; without borrower, leader and reason for the committee.
   *
   * @param contact how to reach the borrower; null: a session (likewise guardian: a grown-up)
   * @param briefedAt when it was shown how to handle it; null: not recorded
   * @param askBack what of it must not be shot
   * @param recordedAt on a later day than it was issued where it was typed in late
   * @param concerns against what is out, today
   * @param advice that speaks against a bow that is out, for whoever has it; told to those who see
   *     names
   * @param concernsWhenIssued against what went out, as it went out, known now
   */
  record Loan(
      long id,
      String kind,
      Long borrower,
      String name,
      String leader,
      String contact,
      String guardian,
      Instant issuedAt,
      Instant recordedAt,
      LocalDate dueOn,
      String issuedBy,
      String hand,
      String drawLength,
      boolean drawEstimated,
      String experience,
      String overrideWhy,
      String overrideCoach,
      String deposit,
      String depositHow,
      String depositBack,
      Instant briefedAt,
      String briefedBy,
      boolean open,
      int version,
      List<ThingJson> askBack,
      List<Item> lines,
      List<ConcernJson> concerns,
      List<String> advice,
      List<ConcernJson> concernsWhenIssued) {
    static Loan of(
        LoanSheet sheet,
        List<Thing> askBack,
        List<LoanLine> lines,
        Against against,
        List<String> advice,
        Against whenIssued,
        boolean names,
        Currency currency) {
      return new Loan(
          sheet.id().value(),
          Words.of(sheet.kind()),
          names && sheet.borrower() != null ? sheet.borrower().value() : null,
          names ? sheet.name() : null,
          names ? sheet.leader() : null,
          names ? sheet.contact() : null,
          names ? sheet.guardian() : null,
          sheet.issuedAt(),
          sheet.recordedAt(),
          sheet.dueOn(),
          sheet.issuedBy(),
          sheet.hand() == null ? null : Words.of(sheet.hand()),
          sheet.drawLength() == null ? null : LengthText.exact(sheet.drawLength()),
          sheet.drawEstimated(),
          sheet.experience() == null ? null : Words.of(sheet.experience()),
          names ? sheet.overrideWhy() : null,
          names ? sheet.overrideCoach() : null,
          new Money(sheet.depositMinor()).plain(currency),
          sheet.depositHow() == null ? null : Words.of(sheet.depositHow()),
          sheet.depositBackMinor() == null
              ? null
              : new Money(sheet.depositBackMinor()).plain(currency),
          sheet.briefedAt(),
          sheet.briefedBy(),
          lines.stream().anyMatch(LoanLine::isOut),
          sheet.version(),
          askBack.stream().map(ThingJson::of).toList(),
          lines.stream().map(Item::of).toList(),
          ConcernJson.of(against),
          names ? advice : List.of(),
          ConcernJson.of(whenIssued));
    }
  }

  /**
   * One line of a loan; {@code outcome} once it has ended.
   *
   * @param count arrows given out of a pool; {@code arrows} of a set too
   * @param missing arrows that did not come back with the rest
   */
  record Item(
      long line,
      String code,
      String kind,
      Long rig,
      Integer count,
      Integer arrows,
      Instant outAt,
      Instant backAt,
      String outcome,
      Integer backCount,
      Integer missing) {
    static Item of(LoanLine line) {
      return new Item(
          line.id(),
          line.code(),
          line.kindWord(),
          line.rig() == null ? null : line.rig().value(),
          line.arrowCount(),
          line.arrows(),
          line.outAt(),
          line.backAt(),
          line.outcome() == null ? null : Words.of(line.outcome()),
          line.backCount(),
          line.missing());
    }
  }
}
