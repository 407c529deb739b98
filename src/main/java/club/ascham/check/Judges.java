package club.ascham.check;

import club.ascham.concern.Concerns;
import club.ascham.drift.ClubScatter;
import club.ascham.drift.Drifts;
import club.ascham.form.Refusal;
import club.ascham.learnt.SecondMeasurement;
import club.ascham.people.Actor;
import club.ascham.rig.OwnRecords;
import club.ascham.rig.RigCard;
import club.ascham.rules.Club;
import club.ascham.statistics.Drift;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Gives each bow a judge who knows its own record and this club's limits. */
@ApplicationScoped
class Judges {
  private final OwnRecords records;
  private final Club club;
  private final ClubScatter scatter;
  private final Concerns concerns;
  private final Drifts drifts;
  private final Actor actor;
  private final ClubTime time;

  Judges(
      OwnRecords records,
      Club club,
      ClubScatter scatter,
      Concerns concerns,
      Drifts drifts,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.club = club;
    this.scatter = scatter;
    this.concerns = concerns;
    this.drifts = drifts;
    this.actor = actor;
    this.time = time;
  }

  /** How far two readings by this club's people may lie apart without a change. */
  Length scatter() {
    return scatter.today().change();
  }

  /**
   * @param second the measurement after an adjustment that is to be judged; null: none
   */
  Judging of(RigCard card, SecondMeasurement second) {
    return new Judging(
        card,
        records.of(card, second),
        club.rules().twistLimits(),
        scatter(),
        () -> concerns.of(card.id()),
        now -> isChanging(card, now));
  }

  /** What is still open about a check whose parts are not settled yet, each at its field. */
  List<Refusal> questions(RigCard card, CheckEntry entry) {
    return new Judging(card, concerns.of(card.id())).questions(entry);
  }

  /** Whether the readings before say so together with this one, which is not kept yet. */
  private boolean isChanging(RigCard card, Reading now) {
    Drift.Measured typed =
        new Drift.Measured(
            time.now(), Long.toString(actor.id().value()), now.brace().mm(), now.tiller().mm());
    boolean bolts = card.spec().orElseThrow().tillerAdjusts();
    return drifts.of(card.setUpId(), bolts, typed).answer() == Drift.Answer.CHANGING;
  }
}
