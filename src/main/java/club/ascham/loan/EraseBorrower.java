package club.ascham.loan;

import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.rules.Club;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.PersonalValues;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.time.NightlyRound;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Makes a borrower a number, on request or when the club has no more need of the name. Loans,
 * checks and every bow's history stay.
 */
@ApplicationScoped
public class EraseBorrower {
  /** In the place of a session leader's name. */
  static final String A_LEADER = "a leader";

  private final Rows rows;
  private final BorrowerRecords borrowers;
  private final PersonalValues personalValues;
  private final Story story;
  private final Club club;
  private final Actor actor;
  private final ClubTime time;

  EraseBorrower(
      Rows rows,
      BorrowerRecords borrowers,
      PersonalValues personalValues,
      Story story,
      Club club,
      Actor actor,
      ClubTime time) {
    this.rows = rows;
    this.borrowers = borrowers;
    this.personalValues = personalValues;
    this.story = story;
    this.club = club;
    this.actor = actor;
    this.time = time;
  }

  /** What came of it. */
  sealed interface Outcome {
    record Erased() implements Outcome {}

    /** The name is needed still. */
    record Needed(String why) implements Outcome {}
  }

  /** Erases one borrower because they, or an officer, asked for it. */
  @Writes
  Outcome onRequest(BorrowerId id) {
    Borrower borrower = borrowers.with(id).orElseThrow();
    if (borrower.isErased()) {
      return new Outcome.Erased();
    }
    Optional<String> needed = neededStill(id);
    if (needed.isPresent()) {
      return new Outcome.Needed(needed.get());
    }
    erase(borrower, actor.id());
    return new Outcome.Erased();
  }

  private Optional<String> neededStill(BorrowerId id) {
    if (rows.number(
            """
            SELECT count(*) FROM loan l JOIN loan_line x ON x.loan_id = l.id
             WHERE l.borrower_id = ?1 AND x.back_at IS NULL""",
            id)
        > 0) {
      return Optional.of("They still have something of the club's: receive it first.");
    }
    return rows.number(
                "SELECT count(*) FROM loan WHERE borrower_id = ?1 AND deposit_minor > 0 AND deposit_back_minor IS NULL",
                id)
            > 0
        ? Optional.of("A deposit is not settled: give it back, or say why it is kept, first.")
        : Optional.empty();
  }

  private void erase(Borrower borrower, AccountId by) {
    borrower.erase(time.today());
    borrowers.flush();
    story.tell(Story.Told.ofClub(time.now(), by, "Erased what was kept of a borrower."));
    personalValues.erase("borrower", borrower.id().value());
  }

  void atNight(@Observes NightlyRound round) {
    whoseTimeIsOver();
  }

  private record Forgettable(BorrowerId id) {}

  private record Led(LoanId id) {}

  /**
   * Erases everyone whose last thing came back, and of whom nothing was changed, longer ago than
   * the club keeps names; leaders of sessions likewise. Answers how many.
   */
  @Writes
  public int whoseTimeIsOver() {
    LocalDate lastDay = time.today().minusDays(club.rules().keepNamesDays());
    Instant before = time.momentOf(lastDay.atStartOfDay());
    // Entry 0 only says how the record found them, not when anyone last needed them.
    List<Forgettable> over =
        rows.list(
            Forgettable.class,
            """
            SELECT b.id FROM borrower b
             WHERE b.erased_on IS NULL
               AND NOT EXISTS (SELECT 1 FROM loan l JOIN loan_line x ON x.loan_id = l.id
                    WHERE l.borrower_id = b.id AND (x.back_at IS NULL OR x.back_at >= ?1))
               AND NOT EXISTS (SELECT 1 FROM loan l
                    WHERE l.borrower_id = b.id AND l.deposit_minor > 0 AND l.deposit_back_minor IS NULL)
               AND NOT EXISTS (SELECT 1 FROM change c JOIN story s ON s.id = c.story_id
                    WHERE c.table_name = 'borrower' AND c.row_id = b.id AND s.recorded_at >= ?1 AND s.id > 0)""",
            before);
    for (Forgettable one : over) {
      erase(borrowers.with(one.id()).orElseThrow(), null);
    }
    List<Led> sessions =
        rows.list(
            Led.class,
            """
            SELECT l.id FROM loan l
             WHERE l.leader IS NOT NULL AND l.leader <> ?2 AND l.issued_at < ?1
               AND NOT EXISTS (SELECT 1 FROM loan_line x WHERE x.loan_id = l.id AND (x.back_at IS NULL OR x.back_at >= ?1))""",
            before,
            A_LEADER);
    for (Led session : sessions) {
      rows.change("UPDATE loan SET leader = ?2 WHERE id = ?1", session.id(), A_LEADER);
    }
    if (!sessions.isEmpty()) {
      story.tell(
          Story.Told.ofClub(time.now(), null, "Erased the names of leaders of past sessions."));
      sessions.forEach(session -> personalValues.erase("loan", session.id().value()));
    }
    return over.size() + sessions.size();
  }
}
