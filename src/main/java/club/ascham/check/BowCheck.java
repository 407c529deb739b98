package club.ascham.check;

import club.ascham.bow.BracePoint;
import club.ascham.id.AccountId;
import club.ascham.id.RigId;
import club.ascham.units.Length;
import club.ascham.verdict.Verdict;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;

/** One check of a bow as it was made; only its release is added later. */
@Entity
public class BowCheck {
  /** With measurements, or a mere look. */
  enum Kind {
    CHECK,
    LOOK
  }

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  private Long rigId;

  @Enumerated(EnumType.STRING)
  private Kind kind;

  private Instant happenedAt;
  private Instant recordedAt;
  private Long checkedBy;
  private Long setUpId;
  private boolean allAsListed;
  private Length brace;
  private String braceTyped;

  @Enumerated(EnumType.STRING)
  private BracePoint braceFrom;

  private Length tillerUpper;
  private String upperTyped;
  private Length tillerLower;
  private String lowerTyped;
  private boolean dryLooseOrFall;
  private boolean cameBackStrung;

  @Enumerated(EnumType.STRING)
  private Verdict.Kind verdict;

  private String verdictText;
  private Long correctsId;
  private String correctionWhy;
  private Instant releasedAt;
  private Long releasedBy;

  protected BowCheck() {}

  BowCheck(RigId rig, Long setUpId, AccountId by, Instant happened, Instant recorded) {
    this.kind = Kind.CHECK;
    this.rigId = rig.value();
    this.setUpId = setUpId;
    this.checkedBy = by.value();
    this.happenedAt = happened;
    this.recordedAt = recorded;
  }

  long id() {
    return id;
  }

  RigId rig() {
    return new RigId(rigId);
  }

  Instant happenedAt() {
    return happenedAt;
  }

  boolean isFit() {
    return verdict == Verdict.Kind.FIT;
  }

  boolean isReleased() {
    return releasedAt != null;
  }

  void measured(Measured measured) {
    brace = measured.brace();
    braceTyped = measured.braceTyped();
    braceFrom = measured.brace() == null ? null : measured.from();
    tillerUpper = measured.upper();
    upperTyped = measured.upperTyped();
    tillerLower = measured.lower();
    lowerTyped = measured.lowerTyped();
  }

  void reported(boolean asListed, boolean dryLoose, boolean strung) {
    allAsListed = asListed;
    dryLooseOrFall = dryLoose;
    cameBackStrung = strung;
  }

  void judged(VerdictWords words) {
    verdict = words.kind();
    verdictText = words.text();
  }

  void corrects(long corrected, String why) {
    correctsId = corrected;
    correctionWhy = why;
  }

  /** A person puts the bow back into use. */
  void release(AccountId by, Instant at) {
    if (!isFit() || isReleased()) {
      throw new IllegalStateException("check " + id + " can't be released");
    }
    releasedAt = at;
    releasedBy = by.value();
  }
}
