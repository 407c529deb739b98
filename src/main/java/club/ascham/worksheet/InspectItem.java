package club.ascham.worksheet;

import club.ascham.bow.Who;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.WorkId;
import club.ascham.people.Actor;
import club.ascham.report.AnswerReport;
import club.ascham.report.Answering;
import club.ascham.report.Reports;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** Signs an inspection: keeps what was found, plans the next, and withdraws what failed. */
@ApplicationScoped
class InspectItem {
  static final String NOT_YOURS =
      "The limb-bolt inspection is signed by someone who holds the club's permit for limb bolts."
          + " Send it to the officer.";

  private final WorkRecords records;
  private final WithdrawItem withdrawItem;
  private final AskForWork askForWork;
  private final KeptAsItIs kept;
  private final Reports reports;
  private final AnswerReport answerReport;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  InspectItem(
      WorkRecords records,
      WithdrawItem withdrawItem,
      AskForWork askForWork,
      KeptAsItIs kept,
      Reports reports,
      AnswerReport answerReport,
      Story story,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.withdrawItem = withdrawItem;
    this.askForWork = askForWork;
    this.kept = kept;
    this.reports = reports;
    this.answerReport = answerReport;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Whether the person at this request may sign this work. */
  boolean maySign(Work work) {
    return work.signedBy() != Who.PERMIT_HOLDER || actor.holdsPermit(time.today());
  }

  @Writes
  Outcome<WorkId> inspect(Subject subject, InspectionList list, Inspection inspection) {
    if (records.isRetired(subject.id())) {
      return Outcome.refused("item", subject.code() + " is retired: there is nothing to inspect.");
    }
    if (kept.keeps(subject.id(), inspection.happened())) {
      return Outcome.refused("item", KeptAsItIs.SAID);
    }
    Work work = list.work();
    if (!maySign(work)) {
      return Outcome.refused(Refusal.notYours("item", NOT_YOURS));
    }
    Optional<Refusal> notAnswered = refusal(inspection);
    if (notAnswered.isPresent()) {
      return Outcome.refused(notAnswered.get());
    }
    Inspected.Outcome outcome = inspection.found().outcome(list);
    long record =
        records.keep(
            subject.id(),
            work,
            inspection.happened(),
            outcome,
            inspection.found().partsUsed(),
            null);
    boolean failed = outcome.result() == Result.FAILED;
    if (failed) {
      withdraw(subject, work, outcome.found(), inspection.happened());
    }
    story.tell(
        Story.Told.ofItem(
                inspection.happened(),
                actor.id(),
                subject.id(),
                work.capital() + (failed ? ": not passed." : ": passed."))
            .because(outcome.found()));
    AnswerReport.Looked looked = AnswerReport.Looked.atInspection(record, inspection.happened());
    inspection.answers().forEach((report, answer) -> answerReport.answer(report, answer, looked));
    return Outcome.done(new WorkId(record));
  }

  /** An answer that can't be kept keeps nothing of the inspection either. */
  private Optional<Refusal> refusal(Inspection inspection) {
    for (Map.Entry<Long, Answering> each : inspection.answers().entrySet()) {
      long id = each.getKey();
      Optional<Refusal> refused =
          reports.one(id).flatMap(report -> answerReport.refusal(report, each.getValue().answer()));
      if (refused.isPresent()) {
        return Optional.of(
            new Refusal(Answering.Fields.of(Long.toString(id)).answer(), refused.get().words()));
      }
    }
    return Optional.empty();
  }

  /** What failed waits for the same inspection again, even where it was out of use before. */
  private void withdraw(Subject subject, Work work, String found, Instant happened) {
    if (withdrawItem.withdraw(subject.id(), new Reason(found, work, null), happened)
        instanceof Outcome.Refused) {
      askForWork.ask(subject.id(), new Request(work, found, true), happened);
    }
  }
}
