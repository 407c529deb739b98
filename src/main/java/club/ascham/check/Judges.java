package club.ascham.check;

import club.ascham.concern.Concerns;
import club.ascham.drift.ClubScatter;
import club.ascham.learnt.SecondMeasurement;
import club.ascham.rig.OwnRecords;
import club.ascham.rig.RigCard;
import club.ascham.rules.Club;
import club.ascham.units.Length;
import jakarta.enterprise.context.ApplicationScoped;

/** Gives each bow a judge who knows its own record and this club's limits. */
@ApplicationScoped
class Judges {
  private final OwnRecords records;
  private final Club club;
  private final ClubScatter scatter;
  private final Concerns concerns;

  Judges(OwnRecords records, Club club, ClubScatter scatter, Concerns concerns) {
    this.records = records;
    this.club = club;
    this.scatter = scatter;
    this.concerns = concerns;
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
        () -> concerns.of(card.id()));
  }
}
