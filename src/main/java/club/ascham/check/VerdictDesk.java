package club.ascham.check;

import club.ascham.bow.Gauge;
import club.ascham.concern.Concerns;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.report.Reports;
import club.ascham.rig.OwnRecords;
import club.ascham.rig.RigCard;
import club.ascham.rig.Trends;
import club.ascham.standing.KeptAsItIs;
import club.ascham.time.ClubTime;
import club.ascham.verdict.Given;
import club.ascham.verdict.Reported;
import club.ascham.verdict.Seen;
import club.ascham.verdict.Sign;
import club.ascham.verdict.Verdict;
import club.ascham.web.NoSuchThing;
import club.ascham.withdrawal.Withdrawals;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Lays out a check and its verdict as it was given. */
@ApplicationScoped
class VerdictDesk {
  private final CheckDesk desk;
  private final Checks checks;
  private final Verdicts verdicts;
  private final Judging judging;
  private final Queue queue;
  private final Concerns concerns;
  private final Reports reports;
  private final Withdrawals withdrawals;
  private final Trends trends;
  private final OwnRecords ownRecords;
  private final KeptAsItIs kept;
  private final Actor actor;
  private final ClubTime time;

  VerdictDesk(
      CheckDesk desk,
      Checks checks,
      Verdicts verdicts,
      Judging judging,
      Queue queue,
      Concerns concerns,
      Reports reports,
      Withdrawals withdrawals,
      Trends trends,
      OwnRecords ownRecords,
      KeptAsItIs kept,
      Actor actor,
      ClubTime time) {
    this.desk = desk;
    this.checks = checks;
    this.verdicts = verdicts;
    this.judging = judging;
    this.queue = queue;
    this.concerns = concerns;
    this.reports = reports;
    this.withdrawals = withdrawals;
    this.trends = trends;
    this.ownRecords = ownRecords;
    this.kept = kept;
    this.actor = actor;
    this.time = time;
  }

  VerdictView view(RigId rig, long id) {
    RigCard card = desk.card(rig);
    Checks.Row check =
        checks
            .one(id)
            .filter(c -> c.rig().equals(rig))
            .orElseThrow(() -> new NoSuchThing("This bow has no check " + id + "."));
    List<Checks.SeenSign> signs = checks.signs(id);
    boolean sameFigures =
        Judging.isPossible(card) && Objects.equals(check.setUpId(), card.setUpId());
    List<Gauge> gauges =
        sameFigures
            ? check
                .reading()
                .map(reading -> BowGauges.of(card, judging.scatter(), reading))
                .orElse(List.of())
            : List.of();
    Checks.Adjusted pair = checks.adjustmentAround(id).orElse(null);
    boolean second = pair != null && pair.after() != null && pair.after() == id;
    List<Queue.Waiting> waiting =
        queue.today().stream().filter(w -> w.isForChecking() && !w.rig().equals(rig)).toList();
    Checks.Row before =
        second && pair.before() != null ? checks.one(pair.before()).orElse(null) : null;
    Map<Long, Given> given = verdicts.of(before == null ? List.of(id) : List.of(id, before.id()));
    return new VerdictView(
        card,
        check,
        given(card, check, given.get(id), signs, sameFigures),
        signs,
        gauges,
        trends.of(card),
        queue.state(rig, time.today()),
        concerns.of(rig).without(Queue.SAID_BY_WAITING),
        reports.openOf(rig),
        !queue.happenedSince(rig, id, check.happenedAt()),
        pair,
        before,
        withdrawals.ofCheck(id),
        before == null ? List.of() : given.get(before.id()).expected(),
        waiting.isEmpty() ? null : waiting.get(0),
        waiting.size(),
        actor.holdsPermit(time.today())
            && card.spec().map(spec -> spec.tillerAdjusts()).orElse(false),
        second ? ownRecords.words(card) : List.of(),
        actor.isOfficer() || actor.holdsPermit(time.today()),
        kept.keeps(rig, time.now()));
  }

  /**
   * As they were given. A check that came from elsewhere may say <i>adjust</i> without any steps:
   * then its readings are judged once more for them, as a volunteer would be told.
   */
  private Given given(
      RigCard card,
      Checks.Row check,
      Given kept,
      List<Checks.SeenSign> signs,
      boolean sameFigures) {
    if (check.verdict() != Verdict.Kind.ADJUST
        || !kept.steps().isEmpty()
        || !sameFigures
        || check.reading().isEmpty()) {
      return kept;
    }
    Seen seen =
        new Seen(
            check.reading().get(),
            signs.stream().map(s -> new Sign(s.part(), s.gravity(), s.words())).toList(),
            new Reported(false, check.cameBackStrung()),
            List.of(),
            Seen.Assured.NOTHING,
            List.of());
    return judging.verdict(card, seen, null, null, false) instanceof Verdict.AdjustFirst again
        ? again.given()
        : kept;
  }
}
