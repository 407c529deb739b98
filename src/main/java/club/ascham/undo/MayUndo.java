package club.ascham.undo;

import club.ascham.concern.Concern;
import club.ascham.time.ClubTime;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Whether a press may be undone: by whoever pressed until the club's day ends, by an officer for a
 * week (judged), and only while nothing rests on it. What blocks a bow since it came in keeps it in
 * here too; what stood against it while it was out, or was told as it came in, does not, since the
 * bow was out with it before: then an officer undoes it, and asks it back.
 *
 * <p>A later receipt or exchange is undone first only where it rests on the same thing, or on the
 * deposit.
 */
final class MayUndo {
  static final int OFFICERS_DAYS = 7;
  private static final String ASK_AN_OFFICER =
      "Something keeps in what would be out again: an officer may undo it, and asks it back.";

  private MayUndo() {}

  /**
   * A press as it is judged.
   *
   * @param day the club's, on which it was pressed
   * @param own whether the one who asks pressed it
   */
  record Press(MoveKind kind, LocalDate day, boolean own, boolean undone) {}

  /**
   * What became of the things since.
   *
   * @param resting facts that rest on the press, as sentences, the first to be said first
   * @param blocking what keeps in something that would be out again, and came since
   * @param keptIn whether anything keeps it in, whenever that came
   */
  record Since(List<String> resting, List<Concern> blocking, boolean keptIn) {
    static final Since NOTHING = new Since(List.of(), List.of(), false);
  }

  /** Why it may not be undone; empty: it may. */
  static Optional<String> refusal(Press press, boolean officer, LocalDate today, Since since) {
    return byTimeAndHand(press, officer, today)
        .or(() -> press.kind().sendsOut() ? byWhatBlocks(since, officer) : Optional.empty())
        .or(() -> since.resting().stream().findFirst());
  }

  /** The same, whatever became of the things. */
  static Optional<String> byTimeAndHand(Press press, boolean officer, LocalDate today) {
    if (press.undone()) {
      return Optional.of("It was undone already.");
    }
    LocalDate last = press.day().plusDays(OFFICERS_DAYS);
    if (today.isAfter(last)) {
      return Optional.of("It was pressed more than a week ago: tell what is so now as it is.");
    }
    if (officer || press.own() && !today.isAfter(press.day())) {
      return Optional.empty();
    }
    return Optional.of(
        (press.own()
                ? "The day it was pressed on is over"
                : "Whoever pressed it may undo it, on the same day")
            + ": ask an officer, who may until "
            + ClubTime.said(last)
            + ".");
  }

  private static Optional<String> byWhatBlocks(Since since, boolean officer) {
    return since.blocking().stream()
        .findFirst()
        .map(one -> "It would be out again, and since it came in: " + one.said())
        .or(() -> since.keptIn() && !officer ? Optional.of(ASK_AN_OFFICER) : Optional.empty());
  }
}
