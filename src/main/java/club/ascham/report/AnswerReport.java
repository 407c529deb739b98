package club.ascham.report;

import club.ascham.people.Actor;
import club.ascham.store.Pressed;
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
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  AnswerReport(
      Reports reports,
      WithdrawItem withdrawItem,
      Rows rows,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.reports = reports;
    this.withdrawItem = withdrawItem;
    this.rows = rows;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How answering went. */
  public sealed interface Outcome {
    record Answered(String page) implements Outcome {}

    /** Nothing was changed. */
    record Refused(Why why, String message) implements Outcome {}

    /** Why nothing was. */
    enum Why {
      NOT_YOURS("Not yours to answer"),
      ANSWERED("Answered already"),
      STILL_OUT("Out on loan still");

      private final String title;

      Why(String title) {
        this.title = title;
      }

      String title() {
        return title;
      }
    }
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
  public Optional<Outcome.Refused> refusal(Report report, Answer answer) {
    if (!report.isOpen()) {
      return Optional.of(
          new Outcome.Refused(
              Outcome.Why.ANSWERED,
              report.answeredBy() + " has answered it: " + report.answerSaid() + "."));
    }
    if (!mayAnswer(report.dangerous())) {
      return Optional.of(new Outcome.Refused(Outcome.Why.NOT_YOURS, NOT_YOURS));
    }
    return answer != Answer.STOP && report.out()
        ? Optional.of(new Outcome.Refused(Outcome.Why.STILL_OUT, STILL_OUT))
        : Optional.empty();
  }

  /**
   * Answers it. May be called inside another use case, without a form key.
   *
   * @param looked null: at its own page, now
   */
  @Writes
  public Outcome answer(long id, Answering answering, Looked looked, String formKey) {
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.Answered(before.get());
    }
    Report report =
        reports.one(id).orElseThrow(() -> new NoSuchThing("There is no report " + id + "."));
    Optional<Outcome.Refused> refusal = refusal(report, answering.answer());
    if (refusal.isPresent()) {
      return refusal.get();
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
    pressed.leads(formKey, report.page());
    return new Outcome.Answered(report.page());
  }

  private void stop(Report report, Answering answering, Looked looked, Instant at) {
    List<Work> works = Remedy.of(answering.part().kind(), report.signs());
    withdrawItem.withdraw(
        answering.part().item(),
        new Reason(
            "Reported: " + report.said() + ". Seen: " + answering.words(),
            works.isEmpty() ? null : works.get(0),
            looked == null ? null : looked.check()),
        at,
        null);
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
