package club.ascham.worksheet;

import club.ascham.assembly.ChangeMoment;
import club.ascham.assembly.StringExchange;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.LoanId;
import club.ascham.id.WorkId;
import club.ascham.people.Actor;
import club.ascham.register.RetireItem;
import club.ascham.register.RetiredWhy;
import club.ascham.register.Retirement;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Takes a string off its rig and fits another. The rig then waits for its set-up; one that is out
 * stays on its loan.
 */
@ApplicationScoped
class ReplaceString {
  private final Subjects subjects;
  private final Spares spares;
  private final StringExchange exchange;
  private final ChangeMoment moments;
  private final KeptAsItIs kept;
  private final RetireItem retireItem;
  private final WorkRecords records;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ReplaceString(
      Subjects subjects,
      Spares spares,
      StringExchange exchange,
      ChangeMoment moments,
      KeptAsItIs kept,
      RetireItem retireItem,
      WorkRecords records,
      Story story,
      Actor actor,
      ClubTime time) {
    this.subjects = subjects;
    this.spares = spares;
    this.exchange = exchange;
    this.moments = moments;
    this.kept = kept;
    this.retireItem = retireItem;
    this.records = records;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Why the string of this item can't be replaced now; empty where it can. */
  static Optional<String> refusal(Subject old) {
    if (old.isRetired()) {
      return Optional.of("This string is retired.");
    }
    if (old.rig() == null) {
      return Optional.of(
          "This string is fitted to no rig, so nothing takes its place: scrap it, or keep it.");
    }
    return Optional.empty();
  }

  @Writes
  Outcome<WorkId> replace(ItemCode oldCode, Replacement replacement) {
    Subject old = subjects.coded(oldCode).orElseThrow();
    Optional<String> refusal = refusal(old);
    if (refusal.isPresent()) {
      return notNow(refusal.get());
    }
    Optional<Spare> spare = spares.forRig(old.rig()).coded(replacement.newString().bare());
    if (spare.isEmpty()) {
      return Outcome.refused(
          "newString",
          replacement.newString().display()
              + " can't take its place: it is no ready string that fits this rig and hangs free."
              + " Choose one of those listed.");
    }
    ChangeMoment.Found moment =
        moments.of(replacement.on(), old.rig(), List.of(old.id(), spare.get().id()));
    if (moment.refused() != null) {
      return Outcome.refused(moment.refused().field(), moment.refused().message());
    }
    Instant at = moment.at();
    if (kept.keeps(old.rig(), at)) {
      return notNow(KeptAsItIs.SAID);
    }
    Optional<LoanId> loan = exchange.exchange(old.rig(), old.id(), spare.get().id(), at);
    long record =
        records.keep(
            old.id(),
            Work.STRING_REPLACEMENT,
            at,
            new Inspected.Outcome(Result.REPLACED, replacement.words(), null),
            null,
            spare.get().id());
    boolean scrapped = replacement.oldString() == Replacement.OldString.SCRAPPED;
    if (scrapped) {
      retireItem.retire(
          old.id(),
          new Retirement(
              scrappedOn(old, at), RetiredWhy.SCRAPPED, "Replaced by " + spare.get().code() + "."));
    }
    story.tell(told(old, spare.get(), loan, scrapped, at).because(replacement.words()));
    return Outcome.done(new WorkId(record));
  }

  private static Outcome<WorkId> notNow(String why) {
    return Outcome.refused(Refusal.now("Not possible now", "item", why));
  }

  /** A bow in use may be registered only after its string was changed. */
  private LocalDate scrappedOn(Subject old, Instant at) {
    LocalDate day = time.dayOf(at);
    return day.isBefore(old.registeredOn()) ? old.registeredOn() : day;
  }

  private Story.Told told(
      Subject old, Spare spare, Optional<LoanId> loan, boolean scrapped, Instant at) {
    Story.Told told =
        Story.Told.ofRig(
            at,
            actor.id(),
            old.rig(),
            List.of(old.id(), spare.id()),
            "String "
                + old.code()
                + " replaced by "
                + spare.code()
                + (scrapped ? "; the old one scrapped." : "; the old one kept as a spare."));
    return loan.map(told::on).orElse(told);
  }
}
