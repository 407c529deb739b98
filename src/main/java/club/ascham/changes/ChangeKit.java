package club.ascham.changes;

import club.ascham.borrower.BorrowerRecords;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.loan.Archer;
import club.ascham.loan.ItemAsked;
import club.ascham.loan.ItemRules;
import club.ascham.loan.KitStock;
import club.ascham.loan.Lendable;
import club.ascham.loan.LineOutcome;
import club.ascham.loan.Loan;
import club.ascham.loan.LoanKind;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.loan.LoanRecords;
import club.ascham.loan.Offered;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.undo.Moves;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Changes what goes beside the bow while the loan goes on: longer arrows for shorter ones, a tab
 * that fits. Parts of the bow itself are changed at the bench.
 */
@ApplicationScoped
class ChangeKit {
  private static final String KEPT =
      "What this borrower has is kept as it is after an accident, until an officer ends that:"
          + " receive it, and issue another kit.";

  private final LoanRecords loans;
  private final BorrowerRecords borrowers;
  private final LoanLines lines;
  private final KitStock stock;
  private final RigSpecs specs;
  private final KeptAsItIs kept;
  private final Moves moves;
  private final Story story;
  private final ClubTime time;

  ChangeKit(
      LoanRecords loans,
      BorrowerRecords borrowers,
      LoanLines lines,
      KitStock stock,
      RigSpecs specs,
      KeptAsItIs kept,
      Moves moves,
      Story story,
      ClubTime time) {
    this.loans = loans;
    this.borrowers = borrowers;
    this.lines = lines;
    this.stock = stock;
    this.specs = specs;
    this.kept = kept;
    this.moves = moves;
    this.story = story;
    this.time = time;
  }

  @Writes
  Outcome<LoanId> change(ChangeKitCommand command, AccountId by) {
    Loan loan = loans.with(command.loan()).orElseThrow();
    Instant now = time.now();
    if (kept.keeps(command.loan(), now)) {
      return Outcome.refused("item", KEPT);
    }
    List<LoanLine> out = lines.of(command.loan()).stream().filter(LoanLine::isOut).toList();
    LoanLine back =
        out.stream()
            .filter(line -> Objects.equals(line.id(), command.lineBack()))
            .findFirst()
            .orElse(null);
    List<ItemAsked> given = command.given() == null ? List.of() : List.of(command.given());
    Map<String, Offered> found = stock.coded(given, time.today());
    ItemRules.Receiver receiver = receiver(loan, out, now);
    List<Refusal> refusals = new ArrayList<>(backRefusals(command, out, back));
    refusals.addAll(ItemRules.refusals(given, found, receiver, command.overrideWhy()));
    if (!refusals.isEmpty()) {
      return Outcome.refused(refusals);
    }
    List<ItemId> about = new ArrayList<>();
    List<String> said = new ArrayList<>();
    Moves.Exchange exchange = moves.exchangeOn(command.loan(), List.of());
    if (back != null) {
      Integer count = command.countBack() == null ? back.arrows() : command.countBack();
      lines.end(back, now, LineOutcome.CHANGED, count);
      lines.holdWhatCameBack(back, count);
      about.add(back.item());
      Integer missing = back.shortBy(count);
      said.add(
          back.code()
              + " handed back"
              + (missing == null || missing == 0 ? "" : ", " + count + " of " + back.arrows()));
    }
    for (ItemAsked one : given) {
      Lendable item = found.get(one.code().bare()).item();
      lines.lend(command.loan(), item.id(), null, now, item.pool() ? one.count() : null);
      about.add(item.id());
      said.add(item.code() + " given out");
    }
    String sentence = String.join(", ", said) + ".";
    story.tell(
        new Story.Told(now, by, sentence, command.overrideWhy(), command.loan(), about, List.of()));
    exchange.made();
    return Outcome.done(command.loan(), sentence + ItemRules.unchecked(found.values(), receiver));
  }

  private static List<Refusal> backRefusals(
      ChangeKitCommand command, List<LoanLine> out, LoanLine back) {
    if (out.isEmpty()) {
      return List.of(new Refusal("item", "Everything is back: this loan is closed."));
    }
    if (command.lineBack() == null) {
      return List.of();
    }
    if (back == null) {
      return List.of(new Refusal("line", "That is back already."));
    }
    if (command.countBack() != null
        && (back.arrows() == null || command.countBack() > back.arrows())) {
      return List.of(
          new Refusal(
              "countBack",
              back.arrows() == null
                  ? "That is not given out by number."
                  : "No more come back than went out: " + back.arrows() + "."));
    }
    if (back.rig() != null) {
      return List.of(
          new Refusal(
              "line", "A part of the bow is changed on the rig's page, with a new set-up check."));
    }
    return out.size() == 1 && command.given() == null
        ? List.of(new Refusal("line", "That is the last thing out: receive the loan instead."))
        : List.of();
  }

  private ItemRules.Receiver receiver(Loan loan, List<LoanLine> out, Instant now) {
    if (loan.kind() == LoanKind.SESSION) {
      return new ItemRules.Receiver(null, null, null, null, now);
    }
    RigCard bow =
        out.stream()
            .map(LoanLine::rig)
            .filter(Objects::nonNull)
            .findFirst()
            .flatMap(specs::of)
            .orElse(null);
    Archer archer =
        new Archer(
            loan.hand(),
            null,
            loan.draw(),
            borrowers.with(loan.borrower()).orElseThrow().details().ageBand(),
            loan.experience());
    return ItemRules.Receiver.of(archer, bow, now);
  }
}
