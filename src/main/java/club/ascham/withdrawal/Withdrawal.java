package club.ascham.withdrawal;

import club.ascham.id.AccountId;
import club.ascham.id.ItemId;
import club.ascham.upkeep.Work;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;

/** One part taken out of use, until someone competent releases it. */
@Entity
public class Withdrawal {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  private Long itemId;
  private Instant happenedAt;
  private Instant recordedAt;
  private Long withdrawnBy;
  private String why;

  @Enumerated(EnumType.STRING)
  private Work work;

  private Long checkId;
  private Instant releasedAt;
  private Long releasedBy;
  private String releaseWhy;
  private Instant decidedAt;
  private Long decidedBy;
  private String noWorkWhy;
  private String lookedAt;
  private Long lookedBy;
  private String lookedByName;

  protected Withdrawal() {}

  Withdrawal(ItemId item, Reason reason, AccountId by, Instant happened, Instant recorded) {
    this.itemId = item.value();
    this.why = reason.why();
    this.work = reason.work();
    this.checkId = reason.check();
    this.withdrawnBy = by.value();
    this.happenedAt = happened;
    this.recordedAt = recorded;
  }

  long id() {
    return id;
  }

  ItemId item() {
    return new ItemId(itemId);
  }

  boolean isOpen() {
    return releasedAt == null;
  }

  String why() {
    return why;
  }

  /** Whether a work was asked for, or it was decided that none fits. */
  boolean isDecided() {
    return work != null || noWorkWhy != null;
  }

  void decide(AccountId by, Instant at, Decision decision) {
    if (!isOpen() || isDecided()) {
      throw new IllegalStateException("withdrawal " + id + " leaves nothing to decide");
    }
    work = decision.work();
    noWorkWhy = decision.noWorkWhy();
    decidedBy = by.value();
    decidedAt = at.isBefore(happenedAt) ? happenedAt : at;
  }

  void release(AccountId by, Instant at, Release release) {
    if (!isOpen()) {
      throw new IllegalStateException("withdrawal " + id + " was released already");
    }
    releasedBy = by.value();
    releasedAt = at.isBefore(happenedAt) ? happenedAt : at;
    releaseWhy = release.why();
    lookedAt = release.lookedAt();
    lookedBy = release.lookedBy() == null ? null : release.lookedBy().value();
    lookedByName = release.lookedByName();
  }
}
