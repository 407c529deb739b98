package club.ascham.recall;

import club.ascham.form.Typed;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;

/** Withdraws what is chosen of all that a recall names, wherever it is, for one reason. */
@ApplicationScoped
class RecallItems {
  private static final int LONGEST_WHY = 500;

  private final Recalls recalls;
  private final WithdrawItem withdrawItem;
  private final Pressed pressed;
  private final ClubTime time;

  RecallItems(Recalls recalls, WithdrawItem withdrawItem, Pressed pressed, ClubTime time) {
    this.recalls = recalls;
    this.withdrawItem = withdrawItem;
    this.pressed = pressed;
    this.time = time;
  }

  /** Reads {@code why}; null where it is no reason, which then stands at its field. */
  static String why(Typed typed) {
    return typed.reason("why", LONGEST_WHY, "Why? It stands on every one of them until released.");
  }

  /**
   * What was withdrawn.
   *
   * @param out how many of them are on loan and must be asked for
   */
  record Outcome(int withdrawn, int out) {
    String said() {
      String all =
          switch (withdrawn) {
            case 0 -> "Nothing was left to withdraw.";
            case 1 -> "One item is withdrawn.";
            default -> withdrawn + " items are withdrawn.";
          };
      return out == 0
          ? all
          : all + " " + (out == 1 ? "One is" : out + " are") + " on loan: ask for it back now.";
    }
  }

  /**
   * @param chosen which of those that the recall names
   */
  @Writes
  Outcome withdraw(RecallQuery query, Predicate<Recalled> chosen, String why, String formKey) {
    if (pressed.ledTo(formKey).isPresent()) {
      return new Outcome(0, 0);
    }
    Instant now = time.now();
    List<Recalled> taken =
        recalls.of(query).stream()
            .filter(Recalled::isInUse)
            .filter(chosen)
            .filter(item -> isWithdrawn(item, why, now))
            .toList();
    pressed.leads(formKey, query.address());
    return new Outcome(
        taken.size(), (int) taken.stream().filter(item -> item.loan() != null).count());
  }

  private boolean isWithdrawn(Recalled item, String why, Instant now) {
    return withdrawItem.withdraw(item.id(), new Reason("Recalled: " + why, null, null), now, null)
        instanceof WithdrawItem.Outcome.Withdrawn;
  }
}
