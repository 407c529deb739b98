package club.ascham.borrower;

import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.form.Words;
import club.ascham.store.Rows;
import club.ascham.story.PersonalValues;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** Everything that is kept of one person, to be handed to them. */
@ApplicationScoped
public class BorrowerData {
  private final Rows rows;
  private final PersonalValues personalValues;

  BorrowerData(Rows rows, PersonalValues personalValues) {
    this.rows = rows;
    this.personalValues = personalValues;
  }

  /**
   * All of it.
   *
   * @param accidents told with a loan of theirs
   * @param changes what was once kept, and when it was changed
   */
  public record Everything(
      BorrowerApi.BorrowerLine person,
      List<LoanLine> loans,
      List<AccidentLine> accidents,
      List<PersonalValues.Kept> changes) {}

  /** An accident, as it was told. */
  public record AccidentLine(long number, long loan, Instant happened, String words) {}

  /** One loan of theirs, with what was measured and asked for it. */
  public record LoanLine(
      long number,
      Instant issued,
      LocalDate due,
      String hand,
      String drawLength,
      String experience,
      String overrideWhy,
      String overrideCoach,
      long depositMinor,
      Long depositBackMinor,
      String depositKeptWhy,
      List<Thing> things) {}

  /** One thing that they had. */
  public record Thing(String code, Instant out, Instant back, String outcome) {}

  private record LoanRead(
      long id,
      Instant issued,
      LocalDate due,
      Hand hand,
      Length draw,
      Experience experience,
      String overrideWhy,
      String overrideCoach,
      long depositMinor,
      Long depositBackMinor,
      String depositKeptWhy) {}

  private record ThingRead(long loan, String code, Instant out, Instant back, String outcome) {}

  public Everything of(Borrowers.Row person) {
    var things =
        rows
            .list(
                ThingRead.class,
                """
                SELECT x.loan_id, i.code, x.out_at AS out, x.back_at AS back, x.outcome
                  FROM loan l JOIN loan_line x ON x.loan_id = l.id JOIN item i ON i.id = x.item_id
                 WHERE l.borrower_id = ?1 AND x.id NOT IN (SELECT line_id FROM undone_line)
                 ORDER BY x.id""",
                person.id())
            .stream()
            .collect(Collectors.groupingBy(ThingRead::loan));
    List<LoanLine> loans =
        rows
            .list(
                LoanRead.class,
                """
                SELECT id, issued_at AS issued, due_on AS due, hand, draw_length AS draw, experience, override_why,
                       override_coach, deposit_minor, deposit_back_minor, deposit_kept_why
                  FROM loan WHERE borrower_id = ?1 ORDER BY id""",
                person.id())
            .stream()
            .map(
                loan ->
                    new LoanLine(
                        loan.id(),
                        loan.issued(),
                        loan.due(),
                        loan.hand() == null ? null : Words.of(loan.hand()),
                        loan.draw() == null ? null : LengthText.both(loan.draw()),
                        loan.experience() == null ? null : Words.of(loan.experience()),
                        loan.overrideWhy(),
                        loan.overrideCoach(),
                        loan.depositMinor(),
                        loan.depositBackMinor(),
                        loan.depositKeptWhy(),
                        things.getOrDefault(loan.id(), List.of()).stream()
                            .map(
                                t ->
                                    new Thing(
                                        new ItemCode(t.code()).display(),
                                        t.out(),
                                        t.back(),
                                        t.outcome()))
                            .toList()))
            .toList();
    return new Everything(
        BorrowerApi.BorrowerLine.of(person),
        loans,
        rows.list(
            AccidentLine.class,
            """
            SELECT a.id AS number, a.loan_id, a.happened_at AS happened, a.words FROM accident a JOIN loan l ON l.id = a.loan_id
             WHERE l.borrower_id = ?1 ORDER BY a.id""",
            person.id()),
        personalValues.of("borrower", person.id().value()));
  }
}
