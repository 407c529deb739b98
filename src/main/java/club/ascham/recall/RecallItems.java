package club.ascham.recall;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AnswerId;
import club.ascham.report.PartChoice;
import club.ascham.report.TellReport;
import club.ascham.store.KeptAnswers;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.function.Predicate;

/**
 * Withdraws what is chosen of all that a recall names, wherever it is, for one reason. What was out
 * of use before has the recall told of it besides, so that no release of the one ends the other.
 */
@ApplicationScoped
class RecallItems {
  private static final int LONGEST_WHY = 500;

  private final Recalls recalls;
  private final WithdrawItem withdrawItem;
  private final TellReport tellReport;
  private final ClubTime time;
  private final KeptAnswers answers;

  RecallItems(
      Recalls recalls,
      WithdrawItem withdrawItem,
      TellReport tellReport,
      ClubTime time,
      KeptAnswers answers) {
    this.recalls = recalls;
    this.withdrawItem = withdrawItem;
    this.tellReport = tellReport;
    this.time = time;
    this.answers = answers;
  }

  /** Reads {@code why}; null where it is no reason, which then stands at its field. */
  static String why(Typed typed) {
    return typed.reason("why", LONGEST_WHY, "Why? It stands on every one of them until released.");
  }

  /**
   * What was withdrawn.
   *
   * @param besides how many were out of use before, and stay so until this recall is answered too
   * @param out how many of all these are on loan and must be asked for
   */
  record Recalling(int withdrawn, int besides, int out) {
    String said() {
      String all =
          switch (withdrawn) {
            case 0 -> besides == 0 ? "Nothing was left to withdraw." : "";
            case 1 -> "One item is withdrawn.";
            default -> withdrawn + " items are withdrawn.";
          };
      if (besides > 0) {
        all =
            (all
                    + (besides == 1 ? " One was" : " " + besides + " were")
                    + " out of use before: the recall stands against "
                    + (besides == 1 ? "it" : "them")
                    + " besides.")
                .strip();
      }
      return out == 0
          ? all
          : all + " " + (out == 1 ? "One is" : out + " are") + " on loan: ask for it back now.";
    }
  }

  /**
   * @param chosen which of those that the recall names
   */
  @Writes
  Outcome<AnswerId> withdraw(RecallQuery query, Predicate<Recalled> chosen, String why) {
    String words = Recalled.RECALL + why;
    Instant now = time.now();
    int withdrawn = 0;
    int besides = 0;
    int out = 0;
    for (Recalled item : recalls.of(query).stream().filter(chosen).toList()) {
      if (recalls.standsAgainst(item.id(), words)) {
        continue;
      }
      if (withdrawItem.withdraw(item.id(), new Reason(words, null, null), now)
          instanceof Outcome.Done) {
        withdrawn++;
      } else {
        PartChoice part = new PartChoice(item.id(), item.bareCode(), item.kind(), item.rig());
        tellReport.tellRecalled(part, item.loan(), words);
        besides++;
      }
      out += item.loan() == null ? 0 : 1;
    }
    Recalling done = new Recalling(withdrawn, besides, out);
    return Outcome.done(answers.keep(done), done.said());
  }
}
