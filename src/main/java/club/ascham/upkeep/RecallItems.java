package club.ascham.upkeep;

import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/** Withdraws everything that a recall names, wherever it is, for one reason. */
@ApplicationScoped
class RecallItems {
  private final Recalls recalls;
  private final Withdrawing withdrawing;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  RecallItems(
      Recalls recalls,
      Withdrawing withdrawing,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.recalls = recalls;
    this.withdrawing = withdrawing;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
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

  @Writes
  Outcome withdraw(RecallQuery query, String why, String formKey) {
    if (pressed.ledTo(formKey).isPresent()) {
      return new Outcome(0, 0);
    }
    Instant now = time.now();
    List<Recalled> taken =
        recalls.of(query).stream()
            .filter(Recalled::isInUse)
            .filter(item -> withdrawing.withdraw(item.id(), now, why, null))
            .toList();
    if (!taken.isEmpty()) {
      story.tell(
          new Story.Told(
              now,
              actor.id(),
              "Recalled: withdrawn.",
              why,
              null,
              taken.stream().map(Recalled::id).toList(),
              taken.stream().map(Recalled::rig).filter(Objects::nonNull).distinct().toList()));
    }
    pressed.leads(formKey, query.address());
    return new Outcome(
        taken.size(), (int) taken.stream().filter(item -> item.loan() != null).count());
  }
}
