package club.ascham.check;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.CheckId;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.learnt.SecondMeasurement;
import club.ascham.measured.Measurement;
import club.ascham.people.Actor;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthText;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.Given;
import club.ascham.verdict.Judgement;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Seen;
import club.ascham.verdict.Sign;
import club.ascham.verdict.Verdict;
import club.ascham.verdict.WorkDone;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps a check and judges it; what the verdict withdraws is withdrawn at once. */
@ApplicationScoped
class RecordCheck {
  static final String PARTS_CHANGED =
      "The parts of this bow were changed since you opened the page. Look the list over again.";
  static final String CORRECT_FIRST =
      "The record is corrected first and the bow set up as it now is; its check comes after that.";
  static final String NOT_SET_UP =
      "This bow has no figures to be judged by: it is in the workshop until its set-up is"
          + " finished.";

  private final Checks checks;
  private final Verdicts verdicts;
  private final Judging judging;
  private final RigSpecs specs;
  private final Strangers strangers;
  private final WithdrawParts withdrawParts;
  private final Reports reports;
  private final AnswersAtCheck answers;
  private final KeptAsItIs kept;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  RecordCheck(
      Checks checks,
      Verdicts verdicts,
      Judging judging,
      RigSpecs specs,
      Strangers strangers,
      WithdrawParts withdrawParts,
      Reports reports,
      AnswersAtCheck answers,
      KeptAsItIs kept,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time) {
    this.checks = checks;
    this.verdicts = verdicts;
    this.judging = judging;
    this.specs = specs;
    this.strangers = strangers;
    this.withdrawParts = withdrawParts;
    this.reports = reports;
    this.answers = answers;
    this.kept = kept;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Reads a check and keeps it; a fault, and what is still open, is left at its field. */
  Outcome<CheckId> check(RigCard card, Typed typed) {
    CheckEntry entry = read(card, typed);
    return typed.sound() ? record(card.id(), entry) : Outcome.unread();
  }

  /** With every fault and every open question at its field at once. */
  CheckEntry read(RigCard card, Typed typed) {
    CheckEntry entry =
        CheckEntry.parse(
            typed,
            new CheckEntry.Asked(
                card,
                reports.partsOf(card.id(), time.now()),
                reports.openOf(card.id()),
                answers::mayAnswer,
                actor.unit(),
                time.now(),
                time.zone()));
    if (!typed.sound() && Judging.isPossible(card) && !SignAnswers.stops(typed)) {
      Refusal.at(typed, judging.questions(card, entry), "form");
    }
    return entry;
  }

  @Writes
  Outcome<CheckId> record(RigId rig, CheckEntry entry) {
    RigCard card =
        specs
            .of(rig)
            .orElseThrow(() -> new NoSuchThing("There is no rig " + rig.value() + " any more."));
    Optional<Refusal> refusal = refusal(card, entry);
    if (refusal.isPresent()) {
      return Outcome.refused(refusal.get());
    }
    Stranger stranger = null;
    if (entry.stranger() != null) {
      Strangers.Found found = strangers.on(card, entry.stranger());
      if (found instanceof Strangers.Found.Wrong wrong) {
        return Outcome.refused("stranger", wrong.message());
      }
      stranger = ((Strangers.Found.OnIt) found).stranger();
      if (entry.strangerAnswer() == null) {
        return Outcome.asked("strangerAnswer", stranger.question(card));
      }
      if (entry.strangerAnswer().corrects()) {
        return Outcome.refused("strangerAnswer", CORRECT_FIRST);
      }
    }
    List<Report> open = reports.openOf(rig);
    Optional<Refusal> notAnswered = answers.refusal(entry, open);
    if (notAnswered.isPresent()) {
      return Outcome.refused(notAnswered.get());
    }
    StillOpen told = StillOpen.of(entry, open, checks.told(rig), toldBefore(rig, entry));
    Seen seen = Judging.seen(card, entry, stranger, told);
    Judgement judgement =
        judging.verdict(
            card, seen, secondMeasurement(entry), workDone(entry), actor.holdsPermit(time.today()));
    if (judgement instanceof AskAgain ask) {
      return new Outcome.Asked<>(
          Questions.of(ask, entry.reading(), entry.asTyped().keySet()).refusals());
    }
    return keep(card, entry, stranger, seen, told, (Verdict) judgement);
  }

  private Optional<Refusal> refusal(RigCard card, CheckEntry entry) {
    if (kept.keeps(card.id(), entry.happened() == null ? time.now() : entry.happened())) {
      return refused("", KeptAsItIs.SAID);
    }
    if (!Judging.isPossible(card)) {
      return refused("", NOT_SET_UP);
    }
    if (entry.version().isPresent() && entry.version().getAsInt() != card.version()) {
      return refused("", PARTS_CHANGED);
    }
    if (entry.lastCheck() != null) {
      long newest = checks.newest(card.id());
      if (entry.lastCheck() != newest) {
        Checks.Row theirs = checks.one(newest).orElseThrow();
        return refused(
            "",
            "%s checked this bow while you did: %s. Nothing of yours is lost; save again to add it."
                .formatted(theirs.by(), verdicts.of(newest).said()));
      }
    }
    if (entry.happened() != null && beforeSetUp(card, entry.happened())) {
      return refused("on", "That is before the set-up whose figures it would be judged by.");
    }
    if (entry.corrects() != null
        && checks.one(entry.corrects()).filter(c -> c.rig().equals(card.id())).isEmpty()) {
      return refused("corrects", "That is not a check of this bow.");
    }
    if (entry.adjustment() != null
        && checks
            .adjustment(entry.adjustment())
            .filter(a -> a.rig().equals(card.id()) && a.after() == null)
            .isEmpty()) {
      return refused("adjustment", "That adjustment was measured already.");
    }
    return Optional.empty();
  }

  private boolean beforeSetUp(RigCard card, Instant happened) {
    return rows.number(
            "SELECT count(*) FROM set_up WHERE id = ?1 AND finished_at > ?2",
            card.setUpId(),
            happened)
        > 0;
  }

  private static Optional<Refusal> refused(String field, String message) {
    return Optional.of(
        field.isEmpty()
            ? Refusal.now("Not possible now", "check", message)
            : new Refusal(field, message));
  }

  /** A correction repeats what its check told: that stands, or was answered, already. */
  private boolean toldBefore(RigId rig, CheckEntry entry) {
    return entry.corrects() != null
        && reports.wasToldAtCheck(rig, checks.one(entry.corrects()).orElseThrow().happenedAt());
  }

  private SecondMeasurement secondMeasurement(CheckEntry entry) {
    return entry.adjustment() == null || !entry.reading().isWhole()
        ? null
        : new SecondMeasurement(
            entry.adjustment(),
            entry.happened() == null ? time.now() : entry.happened(),
            entry.reading());
  }

  private WorkDone workDone(CheckEntry entry) {
    if (entry.adjustment() == null) {
      return null;
    }
    Checks.Adjusted done = checks.adjustment(entry.adjustment()).orElseThrow();
    Reading before =
        done.before() == null
            ? null
            : checks.one(done.before()).flatMap(Checks.Row::reading).orElse(null);
    if (before == null || !entry.reading().isWhole()) {
      return null;
    }
    return new WorkDone(done.done().twistsAdded(), done.done().turns(), before);
  }

  private Outcome<CheckId> keep(
      RigCard card,
      CheckEntry entry,
      Stranger stranger,
      Seen seen,
      StillOpen told,
      Verdict verdict) {
    Instant now = time.now();
    Instant happened = entry.happened() == null ? now : entry.happened();
    Given given = verdict.given();
    long check = add(card, entry, seen, given, happened, now);
    verdicts.keep(check, given);
    keepSigns(check, seen.signs());
    if (entry.adjustment() != null) {
      rows.change("UPDATE adjustment SET after_id = ?2 WHERE id = ?1", entry.adjustment(), check);
    }
    tell(card, entry, given, happened);
    answers.keep(card, entry, told, check, happened);
    if (verdict instanceof Verdict.Withdraw withdraw) {
      ItemId alsoStranger =
          stranger != null && entry.strangerAnswer() == StrangerAnswer.WITHDRAW_BOTH
              ? stranger.id()
              : null;
      withdrawParts.of(card, withdraw, alsoStranger, check, happened);
    }
    return Outcome.done(new CheckId(check));
  }

  private void keepSigns(long check, List<Sign> signs) {
    if (signs.isEmpty()) {
      return;
    }
    rows.add(
        "check_sign (check_id, part, gravity, words)",
        signs.stream()
            .map(sign -> List.of(check, sign.part(), sign.gravity(), sign.words()))
            .toList());
  }

  private long add(
      RigCard card, CheckEntry entry, Seen seen, Given given, Instant happened, Instant now) {
    Reading measured = entry.reading();
    Map<Measurement, String> typed = entry.asTyped();
    return rows.add(
        NewRow.of("bow_check")
            .with("rig_id", card.id())
            .with("kind", kind(entry, given))
            .with("happened_at", happened)
            .with("recorded_at", now)
            .with("checked_by", actor.id())
            .with("set_up_id", card.setUpId())
            .with("all_as_listed", entry.allAsListed())
            .with("brace", measured.brace())
            .with("brace_typed", typed.get(Measurement.BRACE))
            .with("brace_from", measured.from())
            .with("tiller_upper", measured.tillerUpper())
            .with("upper_typed", typed.get(Measurement.TILLER_UPPER))
            .with("tiller_lower", measured.tillerLower())
            .with("lower_typed", typed.get(Measurement.TILLER_LOWER))
            .with("dry_loose_or_fall", seen.reported().dryLooseOrFall())
            .with("came_back_strung", seen.reported().cameBackStrung())
            .with("verdict", given.kind())
            .with("corrects_id", entry.corrects())
            .with("correction_why", entry.corrects() == null ? null : entry.correctionWhy()));
  }

  /** What stays unstrung is not measured: then it was a look, and a full check is still due. */
  private static Checks.Kind kind(CheckEntry entry, Given given) {
    return given.waits() && !entry.reading().isWhole() ? Checks.Kind.LOOK : Checks.Kind.CHECK;
  }

  private void tell(RigCard card, CheckEntry entry, Given given, Instant happened) {
    Reading reading = entry.reading();
    String measured =
        reading.isWhole()
            ? "; brace %s, tiller %s"
                .formatted(LengthText.both(reading.brace()), LengthText.both(reading.tiller()))
            : "";
    Story.Told told =
        Story.Told.ofRig(
            happened,
            actor.id(),
            card.id(),
            card.partIds(),
            (entry.corrects() != null
                    ? "Checked again, correcting a check: "
                    : kind(entry, given) == Checks.Kind.LOOK ? "Looked over: " : "Checked: ")
                + given.said()
                + measured
                + ".");
    String why =
        entry.corrects() != null
            ? entry.correctionWhy()
            : given.kind() == Verdict.Kind.FIT
                ? null
                : Words.sentences(Remark.words(given.reasons()));
    story.tell(why == null ? told : told.because(why));
  }
}
