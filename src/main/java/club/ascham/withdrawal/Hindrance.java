package club.ascham.withdrawal;

import club.ascham.standing.KeptAsItIs;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import java.util.List;
import java.util.Optional;

/**
 * Why a part can't be released yet, and what would make it possible.
 *
 * @param message both, for the person
 * @param page where that is done
 * @param act the word on the button that leads there
 */
public record Hindrance(String message, String page, String act) {
  static final String UNDECIDED =
      "What it needs is not decided yet: an inspection, or that none fits and why. Decide that"
          + " first.";

  /**
   * What a release is weighed by.
   *
   * @param work that was asked for; null: none
   * @param decided whether a work was asked for, or it was decided that none fits
   * @param result what that work came to since it was asked for; null: it was not done
   * @param accident after which it is kept as it is; null: none
   */
  public record Weighed(
      long id,
      String bareCode,
      boolean retired,
      Work work,
      boolean decided,
      String result,
      Long accident) {
    String code() {
      return new ItemCode(bareCode).display();
    }
  }

  /**
   * The first thing that stands in the way; empty where someone with the permit may release it.
   *
   * @param failed work that it failed last and has not passed since
   */
  static Optional<Hindrance> of(Weighed open, List<Work> failed) {
    if (open.accident() != null) {
      return Optional.of(
          new Hindrance(KeptAsItIs.SAID, "/accidents/" + open.accident(), "To the accident"));
    }
    if (open.retired()) {
      return Optional.of(
          new Hindrance(
              "It is retired, so nobody looks at it. Found again, it may be looked at and released.",
              "/items/" + open.code(),
              "To its page"));
    }
    if (!open.decided()) {
      return Optional.of(
          new Hindrance(
              UNDECIDED, "/withdrawals/" + open.id() + "/decide", "Decide what it needs"));
    }
    if (!failed.isEmpty()) {
      Work work = failed.get(0);
      return Optional.of(
          worksheet(
              open,
              work,
              "Its newest %s was not passed. Put right what was found and inspect it again, or scrap it."
                  .formatted(work.said())));
    }
    if (open.work() == null || "PASSED".equals(open.result())) {
      return Optional.empty();
    }
    return Optional.of(
        worksheet(
            open,
            open.work(),
            open.work().isInspection()
                ? "The %s that was asked for is not done yet. It may be released once that is passed."
                    .formatted(open.work().said())
                : "REPLACED".equals(open.result())
                    ? "Another string took its place. Scrap it; or look it over and keep it on, then"
                        + " it may be released."
                    : "The string replacement that was asked for is not done yet. Replace it; or look"
                        + " it over and keep it on, then it may be released."));
  }

  private static Hindrance worksheet(Weighed open, Work work, String message) {
    return new Hindrance(
        message,
        "/upkeep/" + open.code() + "/" + work.word(),
        work.isInspection() ? "Inspect it" : "Look it over");
  }
}
