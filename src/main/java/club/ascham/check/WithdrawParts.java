package club.ascham.check;

import club.ascham.form.Outcome;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.register.ItemKind;
import club.ascham.rig.RigCard;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict.Withdraw;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Withdraws the parts that a verdict names, and asks for the work that each of them needs. */
@ApplicationScoped
class WithdrawParts {
  private final WithdrawItem withdrawItem;
  private final AskForWork askForWork;

  WithdrawParts(WithdrawItem withdrawItem, AskForWork askForWork) {
    this.withdrawItem = withdrawItem;
    this.askForWork = askForWork;
  }

  /**
   * @param stranger a part that was on the bow and is withdrawn with it; null: none
   */
  void of(RigCard card, Withdraw verdict, ItemId stranger, long check, Instant happened) {
    for (ItemId item : Judging.items(card, verdict.parts())) {
      Set<BowPart> parts =
          verdict.parts().stream()
              .filter(part -> Judging.item(card, part).id().equals(item))
              .collect(Collectors.toCollection(TreeSet::new));
      String why = why(verdict.reasons(), parts);
      List<Work> works =
          parts.stream()
              .map(part -> work(part, Judging.item(card, part).kind()))
              .distinct()
              .toList();
      boolean withdrawn =
          withdrawItem.withdraw(item, new Reason(why, works.get(0), check), happened)
              instanceof Outcome.Done;
      // The first work is asked for with the withdrawal; one that stood before asked for its own.
      int asked = withdrawn ? 1 : 0;
      works.stream()
          .skip(asked)
          .forEach(work -> askForWork.ask(item, new Request(work, why, true), happened));
    }
    if (stranger != null) {
      withdrawItem.withdraw(
          stranger,
          new Reason(Words.sentences(Remark.words(verdict.reasons())), null, check),
          happened);
    }
  }

  /** A part that came back on a bow in the place of another: nobody knows which is which. */
  void both(RigCard card, Stranger stranger, Instant happened) {
    String why = stranger.unclear(card) + ".";
    stranger
        .insteadOf(card)
        .ifPresent(
            listed ->
                withdrawItem.withdraw(
                    listed.id(),
                    new Reason(why, work(Judging.verdictPart(listed.place()), listed.kind()), null),
                    happened));
    withdrawItem.withdraw(stranger.id(), new Reason(why, null, null), happened);
  }

  /** The reasons that lie in these parts, and those that name no part. */
  private static String why(List<Remark> reasons, Set<BowPart> parts) {
    List<Remark> own =
        reasons.stream()
            .filter(reason -> reason.part().filter(part -> !parts.contains(part)).isEmpty())
            .toList();
    return Words.sentences(Remark.words(own.isEmpty() ? reasons : own));
  }

  /** The work that a part of the bow asks for where something is wrong with it. */
  static Work work(BowPart part, ItemKind kind) {
    return switch (part) {
      case STRING -> Work.STRING_REPLACEMENT;
      case LIMBS -> Work.LIMB_INSPECTION;
      case BOLTS -> Work.BOLT_INSPECTION;
      case RISER, REST -> kind == ItemKind.BOW ? Work.LIMB_INSPECTION : Work.RISER_INSPECTION;
    };
  }
}
