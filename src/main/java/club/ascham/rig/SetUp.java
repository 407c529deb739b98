package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.bow.SetUpFigures;
import club.ascham.id.AccountId;
import club.ascham.id.RigId;
import club.ascham.units.Length;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;

/** One setting-up of a rig: which steps were done, and what it measured. */
@Entity
public class SetUp {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  private Long rigId;
  private Instant begunAt;
  private Long begunBy;
  private Instant finishedAt;
  private Long finishedBy;
  private String stepsDone = "";
  private Length brace;
  private String braceTyped;

  @Enumerated(EnumType.STRING)
  private BracePoint braceFrom;

  private Length tillerUpper;
  private String upperTyped;
  private Length tillerLower;
  private String lowerTyped;
  private Length nocking;
  private String nockingTyped;
  private boolean screwsSeen;
  private Double turnsUpper;
  private Double turnsLower;
  private Integer twists;

  @Version private int version;

  protected SetUp() {}

  SetUp(RigId rig, AccountId by, Instant at) {
    this.rigId = rig.value();
    this.begunBy = by.value();
    this.begunAt = at;
  }

  long id() {
    return id;
  }

  int version() {
    return version;
  }

  StepsDone stepsDone() {
    return StepsDone.of(stepsDone);
  }

  SetUpFigures figures() {
    return new SetUpFigures(
        brace,
        braceFrom,
        tillerUpper,
        tillerLower,
        nocking,
        screwsSeen,
        turnsUpper,
        turnsLower,
        twists);
  }

  void brace(Length measured, String typed, BracePoint from) {
    open();
    brace = measured;
    braceTyped = typed;
    braceFrom = from;
  }

  void tiller(Length upper, String typedUpper, Length lower, String typedLower) {
    open();
    tillerUpper = upper;
    upperTyped = typedUpper;
    tillerLower = lower;
    lowerTyped = typedLower;
  }

  void nocking(Length aboveSquare, String typed) {
    open();
    nocking = aboveSquare;
    nockingTyped = typed;
  }

  void screwsSeen(boolean seen) {
    open();
    screwsSeen = seen;
  }

  /** Turns out of each limb bolt; null: nobody counted. */
  void turns(Double upper, Double lower) {
    open();
    turnsUpper = upper;
    turnsLower = lower;
  }

  /** Twists in the string; null: nobody counted. */
  void twists(Integer counted) {
    open();
    twists = counted;
  }

  void done(StepsDone now) {
    open();
    stepsDone = now.text();
  }

  /** Other parts were fitted: nothing done or measured so far holds for them. */
  void beginAgain(AccountId by, Instant at) {
    open();
    begunBy = by.value();
    begunAt = at;
    stepsDone = "";
    brace(null, null, null);
    tiller(null, null, null, null);
    nocking(null, null);
    screwsSeen = false;
    turns(null, null);
    twists(null);
  }

  void finish(AccountId by, Instant at) {
    open();
    finishedAt = at.isBefore(begunAt) ? begunAt : at;
    finishedBy = by.value();
  }

  private void open() {
    if (finishedAt != null) {
      throw new IllegalStateException("set-up " + id + " is finished: its figures never change");
    }
  }
}
