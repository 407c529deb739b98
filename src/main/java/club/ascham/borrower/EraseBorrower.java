package club.ascham.borrower;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.rules.Club;
import club.ascham.store.IdempotencyKeys;
import club.ascham.store.Rows;
import club.ascham.store.Scrubbing;
import club.ascham.store.Writes;
import club.ascham.story.Forgotten;
import club.ascham.story.FreeTexts;
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
import java.util.Set;

/**
 * Makes a borrower a number, on request or when the club has no more need of the name. Loans,
 * checks and every bow's history stay.
 */
@ApplicationScoped
public class EraseBorrower {
  /** In the place of a session leader's name. */
  static final String A_LEADER = "a leader";

  private final Rows rows;
  private final Scrubbing scrubbing;
  private final BorrowerRecords borrowers;
  private final PersonalValues personalValues;
  private final FreeTexts freeTexts;
  private final Story story;
  private final Club club;
  private final Actor actor;
  private final ClubTime time;

  EraseBorrower(
      Rows rows,
      Scrubbing scrubbing,
      BorrowerRecords borrowers,
      PersonalValues personalValues,
      FreeTexts freeTexts,
      Story story,
      Club club,
      Actor actor,
      ClubTime time) {
    this.rows = rows;
    this.scrubbing = scrubbing;
    this.borrowers = borrowers;
    this.personalValues = personalValues;
    this.freeTexts = freeTexts;
    this.story = story;
    this.club = club;
    this.actor = actor;
    this.time = time;
  }

  /**
   * Erases one borrower because they, or an officer, asked for it: a number from now on, or
   * already.
   *
   * @param texts keys of free texts that may mean them
   */
  @Writes
  public Outcome<BorrowerId> onRequest(BorrowerId id, Set<String> texts) {
    Borrower borrower = borrowers.with(id).orElseThrow();
    if (!borrower.isErased()) {
      Optional<String> needed = neededStill(id);
      if (needed.isPresent()) {
        return Outcome.refused(Refusal.now("Needed still", needed.get()));
      }
      erase(borrower, actor.id(), freeTexts.all(), texts);
    }
    forgetWhatStayed();
    return Outcome.done(id, "Erased: from now on a number.");
  }

  /**
   * The texts that named someone erased, or may have, and are there still; null: it was longer ago
   * than a press is repeated, and what names a number is not kept for ever.
   */
  List<FreeTexts.Hit> stays(BorrowerId id) {
    Instant since = stillTold();
    return rows.number(
                "SELECT count(*) FROM borrower WHERE id = ?1 AND erased_on < ?2",
                id,
                time.dayOf(since))
            > 0
        ? null
        : freeTexts.still(
            rows.list(
                FreeTexts.Stayed.class,
                """
                SELECT text_key AS key, earlier, sure FROM name_stays
                 WHERE borrower_id = ?1 AND at >= ?2 ORDER BY id""",
                id,
                since));
  }

  private void forgetWhatStayed() {
    rows.change("DELETE FROM name_stays WHERE at < ?1", stillTold());
  }

  private Instant stillTold() {
    return time.now().minus(IdempotencyKeys.KEPT);
  }

  /** The texts that name them, or may. */
  public List<FreeTexts.Hit> naming(BorrowerId id, BorrowerDetails details) {
    return naming(id, details, freeTexts.all());
  }

  private List<FreeTexts.Hit> naming(
      BorrowerId id, BorrowerDetails details, List<FreeTexts.Text> all) {
    return freeTexts.naming(all, forgotten(id, details), "/borrowers/" + id.value());
  }

  /** By every name, contact and guardian they ever had here: older texts hold older names. */
  private Forgotten forgotten(BorrowerId id, BorrowerDetails details) {
    return Forgotten.of(details.name(), details.contact(), details.guardian())
        .and(
            Forgotten.of(
                personalValues.ever("borrower", id.value(), "name"),
                personalValues.ever("borrower", id.value(), "contact", "guardian")));
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
    if (rows.number(
            """
            SELECT count(*) FROM accident a JOIN loan l ON l.id = a.loan_id
             WHERE l.borrower_id = ?1 AND a.ended_at IS NULL""",
            id)
        > 0) {
      return Optional.of(
          "What they had in hand is kept as it is after an accident: end the keeping first.");
    }
    return rows.number(
                "SELECT count(*) FROM loan WHERE borrower_id = ?1 AND deposit_minor > 0 AND deposit_back_minor IS NULL",
                id)
            > 0
        ? Optional.of("A deposit is not settled: give it back, or say why it is kept, first.")
        : Optional.empty();
  }

  private int erase(
      Borrower borrower, AccountId by, List<FreeTexts.Text> texts, Set<String> chosen) {
    List<List<Object>> stay =
        naming(borrower.id(), borrower.details(), texts).stream()
            .filter(hit -> hit.stays(chosen))
            .map(
                hit ->
                    List.<Object>of(
                        borrower.id(), hit.key(), hit.earlier(), hit.sure(), time.now()))
            .toList();
    if (!stay.isEmpty()) {
      rows.add("name_stays (borrower_id, text_key, earlier, sure, at)", stay);
    }
    int taken =
        freeTexts.takeOut(
            texts,
            forgotten(borrower.id(), borrower.details()),
            chosen,
            count -> {
              borrower.erase(time.today());
              story.tell(by, "Erased what was kept of a borrower" + FreeTexts.said(count));
            });
    personalValues.erase("borrower", borrower.id().value());
    scrubbing.onceSaved();
    return taken;
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
    forgetWhatStayed();
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
               AND NOT EXISTS (SELECT 1 FROM loan l JOIN accident a ON a.loan_id = l.id
                    WHERE l.borrower_id = b.id AND a.ended_at IS NULL)
               AND NOT EXISTS (SELECT 1 FROM change c JOIN story s ON s.id = c.story_id
                    WHERE c.table_name = 'borrower' AND c.row_id = b.id AND s.recorded_at >= ?1 AND s.id > 0)""",
            before);
    List<FreeTexts.Text> texts = over.isEmpty() ? List.of() : freeTexts.all();
    for (Forgettable one : over) {
      int taken = erase(borrowers.with(one.id()).orElseThrow(), null, texts, Set.of());
      // A text may name two of them.
      texts = taken == 0 ? texts : freeTexts.all();
    }
    List<Led> sessions =
        rows.list(
            Led.class,
            """
            SELECT l.id FROM loan l
             WHERE l.leader IS NOT NULL AND l.leader <> ?2 AND l.issued_at < ?1
               AND NOT EXISTS (SELECT 1 FROM loan_line x WHERE x.loan_id = l.id AND (x.back_at IS NULL OR x.back_at >= ?1))
               AND NOT EXISTS (SELECT 1 FROM accident a WHERE a.loan_id = l.id AND a.ended_at IS NULL)""",
            before,
            A_LEADER);
    for (Led session : sessions) {
      rows.change("UPDATE loan SET leader = ?2 WHERE id = ?1", session.id(), A_LEADER);
    }
    if (!sessions.isEmpty()) {
      story.tell(null, "Erased the names of leaders of past sessions.");
      sessions.forEach(session -> personalValues.erase("loan", session.id().value()));
      scrubbing.onceSaved();
    }
    return over.size() + sessions.size();
  }
}
