package club.ascham.report;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ReportId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.Work;
import club.ascham.web.NoSuchThing;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Answers what was told: a person has looked. What is stopped is withdrawn at once. */
@ApplicationScoped
public class AnswerReport {
  public static final String NOT_YOURS =
      "A dangerous sign is answered by someone who holds the club's permit. It stays open.";

  static final String STILL_OUT =
      "It is out on loan still: receive it first, then look. It can be stopped all the same.";

  private final Reports reports;
  private final WithdrawItem withdrawItem;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  AnswerReport(
      Reports reports,
      WithdrawItem withdrawItem,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time) {
    this.reports = reports;
    this.withdrawItem = withdrawItem;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * What the answer rests on.
   *
   * @param check null: none (likewise record, of an inspection)
   */
  public record Looked(Long check, Long record, Instant at) {
    public static Looked atCheck(long check, Instant at) {
      return new Looked(check, null, at);
    }

    public static Looked atInspection(long record, Instant at) {
      return new Looked(null, record, at);
    }
  }

  /** Whether the person at this request may answer it. */
  public boolean mayAnswer(boolean dangerous) {
    return !dangerous || actor.holdsPermit(time.today());
  }

  /** Why this report can't be answered so, now, by this person; empty: it can. */
  public Optional<Refusal> refusal(Report report, Answer answer) {
    if (!report.isOpen()) {
      return Optional.of(
          Refusal.now(
              "Answered already",
              "answer",
              report.answeredBy() + " has answered it: " + report.answerSaid() + "."));
    }
    if (!mayAnswer(report.dangerous())) {
      return Optional.of(Refusal.notYours("answer", NOT_YOURS));
    }
    return answer != Answer.STOP && report.out()
        ? Optional.of(Refusal.now("Out on loan still", "answer", STILL_OUT))
        : Optional.empty();
  }

  /**
   * Answers it. May be called inside another use case.
   *
   * @param looked null: at its own page, now
   */
  @Writes
  public Outcome<ReportId> answer(long id, Answering answering, Looked looked) {
    Report report =
        reports.one(id).orElseThrow(() -> new NoSuchThing("There is no report " + id + "."));
    Optional<Refusal> refusal = refusal(report, answering.answer());
    if (refusal.isPresent()) {
      return Outcome.refused(refusal.get());
    }
    // Looked at on a day that is past, and told since: it is answered now.
    Instant at =
        looked == null || looked.at().isBefore(report.happenedAt()) ? time.now() : looked.at();
    Instant answered = at.isBefore(report.happenedAt()) ? report.happenedAt() : at;
    rows.change(
        """
        UPDATE report SET answer = ?2, answered_at = ?3, answered_by = ?4, answer_words = ?5,
               watch_until = ?6, check_id = ?7, record_id = ?8
         WHERE id = ?1""",
        id,
        answering.answer(),
        answered,
        actor.id(),
        answering.words(),
        answering.until(),
        looked == null ? null : looked.check(),
        looked == null ? null : looked.record());
    story.tell(
        new Story.Told(
            answered,
            actor.id(),
            sentence(report, answering),
            answering.words(),
            report.loan(),
            report.parts().stream().map(PartChoice::item).toList(),
            report.rig() == null ? List.of() : List.of(report.rig())));
    if (answering.part() != null) {
      stop(report, answering, looked, answered);
    }
    return Outcome.done(new ReportId(id), "Answered.");
  }

  private void stop(Report report, Answering answering, Looked looked, Instant at) {
    List<Work> works = Remedy.of(answering.part().kind(), report.signs());
    withdrawItem.withdraw(
        answering.part().item(),
        new Reason(
            "Reported: " + report.said() + ". Seen: " + answering.words(),
            works.isEmpty() ? null : works.get(0),
            looked == null ? null : looked.check()),
        at);
  }

  private static String sentence(Report report, Answering answering) {
    String told = "Answered what was reported (" + Telling.said(report.signs()) + "): ";
    return told
        + switch (answering.answer()) {
          case NOTHING_THERE -> "looked, nothing there.";
          case STOP -> answering.part().code() + " is stopped.";
          case WATCH -> "watched until " + ClubTime.said(answering.until()) + ".";
        };
  }
}
