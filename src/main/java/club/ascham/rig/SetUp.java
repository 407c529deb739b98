package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.bow.SetUpFigures;
import club.ascham.id.AccountId;
import club.ascham.id.RigId;
import club.ascham.measured.Measurement;
import club.ascham.units.Length;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Map;

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

  public SetUp(RigId rig, AccountId by, Instant at) {
    this.rigId = rig.value();
    this.begunBy = by.value();
    this.begunAt = at;
  }

  long id() {
    return id;
  }

  public int version() {
    return version;
  }

  public StepsDone stepsDone() {
    return StepsDone.of(stepsDone);
  }

  public SetUpFigures figures() {
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

  /** Writes what was measured or counted; what is null is left as it stands. */
  public void write(SetUpFigures measured, Map<Measurement, String> typed) {
    open();
    if (measured.brace() != null) {
      brace = measured.brace();
      braceTyped = typed.get(Measurement.BRACE);
      braceFrom = measured.braceFrom();
    }
    if (measured.tillerUpper() != null && measured.tillerLower() != null) {
      tillerUpper = measured.tillerUpper();
      upperTyped = typed.get(Measurement.TILLER_UPPER);
      tillerLower = measured.tillerLower();
      lowerTyped = typed.get(Measurement.TILLER_LOWER);
    }
    if (measured.nocking() != null) {
      nocking = measured.nocking();
      nockingTyped = typed.get(Measurement.NOCKING);
    }
    screwsSeen |= measured.lockingScrewsSeen();
    turnsUpper = measured.turnsUpper() != null ? measured.turnsUpper() : turnsUpper;
    turnsLower = measured.turnsLower() != null ? measured.turnsLower() : turnsLower;
    twists = measured.twists() != null ? measured.twists() : twists;
  }

  /** No bolt holds the limbs of a one-piece bow, so there is none to see. */
  public void noScrewsToSee() {
    open();
    screwsSeen = true;
  }

  public void done(StepsDone now) {
    open();
    stepsDone = now.text();
  }

  /** Other parts were fitted: nothing done or measured so far holds for them. */
  public void beginAgain(AccountId by, Instant at) {
    open();
    begunBy = by.value();
    begunAt = at;
    stepsDone = "";
    brace = tillerUpper = tillerLower = nocking = null;
    braceTyped = upperTyped = lowerTyped = nockingTyped = null;
    braceFrom = null;
    screwsSeen = false;
    turnsUpper = turnsLower = null;
    twists = null;
  }

  public void finish(AccountId by, Instant at) {
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
