package club.ascham.upkeep;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.time.Instant;

/** Work asked for out of turn: which it is, and what of it changes until it is done. */
@Entity
class UpkeepTask {
  @Id private Long id;

  private long itemId;

  @Enumerated(EnumType.STRING)
  private Work work;

  private Instant openedAt;
  private String why;
  private boolean blocks;
  private Long closedByRecord;

  protected UpkeepTask() {}

  /** Adds a reason; where that one keeps the item in, what was looked at before answers neither. */
  void askAgain(Request request, Instant happened) {
    open();
    if (!why.contains(request.why())) {
      why += " " + request.why();
    }
    if (request.blocks()) {
      blocks = true;
      openedAt = happened.isAfter(openedAt) ? happened : openedAt;
    }
  }

  /** Done by what is on record, unless that was before it was asked for. */
  void closeBy(long record, Instant happened) {
    open();
    if (!openedAt.isAfter(happened)) {
      closedByRecord = record;
    }
  }

  private void open() {
    if (closedByRecord != null) {
      throw new IllegalStateException("what task " + id + " asks for was done");
    }
  }
}
