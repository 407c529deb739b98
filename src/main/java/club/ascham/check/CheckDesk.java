package club.ascham.check;

import club.ascham.bow.Build;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.report.AnswerReport;
import club.ascham.report.Answering;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.report.ToAnswer;
import club.ascham.rig.Part;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.time.ClubTime;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.KnownSign;
import club.ascham.verdict.Signs;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Lays out what the check page shows of one bow, and what its answers are read against. */
@ApplicationScoped
class CheckDesk {
  private final RigSpecs specs;
  private final Checks checks;
  private final Queue queue;
  private final Concerns concerns;
  private final Reports reports;
  private final Strangers strangers;
  private final AnswerReport answerReport;
  private final Actor actor;
  private final ClubTime time;

  CheckDesk(
      RigSpecs specs,
      Checks checks,
      Queue queue,
      Concerns concerns,
      Reports reports,
      Strangers strangers,
      AnswerReport answerReport,
      Actor actor,
      ClubTime time) {
    this.specs = specs;
    this.checks = checks;
    this.queue = queue;
    this.concerns = concerns;
    this.reports = reports;
    this.strangers = strangers;
    this.answerReport = answerReport;
    this.actor = actor;
    this.time = time;
  }

  RigCard card(RigId rig) {
    return specs.known(rig);
  }

  /** A page nobody has typed into yet, with what the last sensible answers are. */
  CheckView fresh(RigId rig, Long adjustment, Long corrects, Long looked) {
    RigCard card = card(rig);
    Typed typed = Typed.nothing();
    if (Judging.isPossible(card)) {
      typed.with("braceFrom", Words.of(card.setUp().braceFrom()));
    }
    if (adjustment != null) {
      typed.with("adjustment", adjustment);
      checks
          .adjustment(adjustment)
          .filter(done -> done.rig().equals(rig) && done.before() != null)
          .ifPresent(done -> EarlierAnswers.carry(checks, done.before(), typed, false));
    }
    if (looked != null && checks.one(looked).filter(one -> one.rig().equals(rig)).isPresent()) {
      typed.with("looked", looked);
      EarlierAnswers.carry(checks, looked, typed, false);
    }
    if (corrects != null) {
      typed.with("corrects", corrects);
      EarlierAnswers.carry(checks, corrects, typed, true);
    }
    return view(card, typed);
  }

  CheckView view(RigCard card, Typed typed) {
    Build build = CheckEntry.build(card);
    List<club.ascham.verdict.BowPart> must = Signs.mustAnswer(build);
    Integer adjustment = typed.whole("adjustment", 0, Integer.MAX_VALUE);
    Integer corrects = typed.whole("corrects", 0, Integer.MAX_VALUE);
    return new CheckView(
        card,
        queue.state(card.id(), time.today()),
        Judging.isPossible(card),
        concerns.of(card.id()).without(Queue.SAID_BY_WAITING),
        reports.openOf(card.id()).stream()
            .map(report -> toAnswer(report, Long.toString(report.id()), typed))
            .toList(),
        Answering.Fields.of(CheckEntry.TOLD_NOW),
        checks.told(card.id()),
        checks.newest(card.id()),
        card.parts().stream().map(part -> listed(part, typed)).toList(),
        must.stream().map(part -> look(part, build, typed)).toList(),
        Signs.parts(build).stream()
            .filter(part -> !must.contains(part))
            .map(part -> look(part, build, typed))
            .toList(),
        adjustment == null ? null : checks.adjustment(adjustment).orElse(null),
        corrects == null ? null : checks.one(corrects).orElse(null),
        strangers.asked(typed, StrangerBack.Fields.PLAIN, card),
        CheckView.unit(actor.unit()),
        typed);
  }

  private ToAnswer toAnswer(Report report, String key, Typed typed) {
    return new ToAnswer(
        report,
        Answering.Fields.of(key),
        report.parts(),
        answerReport.mayAnswer(report.dangerous()),
        typed);
  }

  private static CheckView.Tick listed(Part part, Typed typed) {
    String value = part.place().name().toLowerCase(Locale.ROOT);
    boolean ticked =
        typed.ticked("allAsListed")
            || Arrays.asList(typed.value("parts").split(",")).contains(value);
    return CheckView.Tick.part(value, part.code() + " " + BowWords.part(part), ticked);
  }

  private static CheckView.Look look(club.ascham.verdict.BowPart part, Build build, Typed typed) {
    return new CheckView.Look(
        part,
        capital(part.words()),
        hint(part, build),
        known(part, build, Gravity.NOTE, typed),
        known(part, build, Gravity.STOP, typed),
        typed);
  }

  private static List<CheckView.Tick> known(
      club.ascham.verdict.BowPart part, Build build, Gravity gravity, Typed typed) {
    List<String> ticked = Arrays.asList(typed.value("signs").split("[,\\s]+"));
    return Signs.of(part, build).stream()
        .filter((KnownSign sign) -> sign.gravity() == gravity)
        .map(sign -> CheckView.Tick.sign(sign, ticked.contains(sign.key())))
        .toList();
  }

  /** Where to look, in the order in which the eye and the thumb go. */
  private static String hint(club.ascham.verdict.BowPart part, Build build) {
    return switch (part) {
      case STRING -> "strands, servings, loops, nocking point";
      case LIMBS -> "along both, edges and tips; string in both grooves";
      case BOLTS ->
          build == Build.SCREW_IN
              ? "hand-tight, washers there, threads whole"
              : "both seated, locking screws tight, washers there";
      case RISER -> "cracks, grip, bushes, limb seats";
      case REST -> "whole and firm";
    };
  }

  static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
