package club.ascham.upkeep;

import club.ascham.id.AccountId;
import club.ascham.id.RuleId;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;

/** A rule that plans upkeep, as it is in force, with who changed it last. */
@Entity
class UpkeepRule {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  @Embedded private RuleDetails details;

  private Long changedBy;
  private Instant changedAt;

  @Version private int version;

  protected UpkeepRule() {}

  UpkeepRule(RuleDetails details, AccountId by, Instant at) {
    change(details, by, at);
  }

  RuleId id() {
    return new RuleId(id);
  }

  void change(RuleDetails to, AccountId by, Instant at) {
    details = to;
    changedBy = by.value();
    changedAt = at;
  }

  /** Has it ask after so many days; answers whether it asked later until now, else all stays. */
  boolean shorten(int days, String source, AccountId by, Instant at) {
    boolean later = details.everyDays() != null && details.everyDays() > days;
    if (later) {
      change(details.every(days, source), by, at);
    }
    return later;
  }
}
