package club.ascham.undo;

import club.ascham.Settings;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.Money;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * What could surprise whoever undoes a press: where there is any, a page says it first.
 *
 * <p>After a put-back the button rides with what was just said, since the next bow's page comes
 * next.
 */
@ApplicationScoped
class ToldFirst {
  private final MoveFacts facts;
  private final Concerns concerns;
  private final Rows rows;
  private final Currency currency;

  ToldFirst(MoveFacts facts, Concerns concerns, Rows rows, Settings settings) {
    this.facts = facts;
    this.concerns = concerns;
    this.rows = rows;
    this.currency = Currency.getInstance(settings.currency());
  }

  private record Deposit(long back, long all) {}

  List<String> of(Move move) {
    List<String> said = new ArrayList<>();
    List<MoveFacts.Line> in =
        facts.lines(move.id()).stream().filter(MoveFacts.Line::cameIn).toList();
    long bows = in.stream().map(MoveFacts.Line::rig).filter(rig -> rig != null).distinct().count();
    if (move.kind() == MoveKind.SESSION_RETURN && bows > 1) {
      said.add("All " + bows + " bows of this press are out again.");
    }
    if (move.kind() == MoveKind.RECEIPT) {
      rows.one(
              Deposit.class,
              "SELECT deposit_back_minor AS back, deposit_minor AS \"all\" FROM loan"
                  + " WHERE id = ?1 AND deposit_minor > 0 AND deposit_back_minor IS NOT NULL",
              move.loan())
          .map(this::deposit)
          .ifPresent(said::add);
    }
    if (rows.number(
            "SELECT count(*) FROM report WHERE receipt_id IN"
                + " (SELECT receipt_id FROM moved WHERE move_id = ?1)",
            move.id())
        > 0) {
      said.add("What was told as it came back stays told: it stands until it is answered.");
    }
    if (move.kind().sendsOut()) {
      askedBack(in.stream().map(MoveFacts.Line::item).toList(), said);
    }
    return said;
  }

  private String deposit(Deposit deposit) {
    return "The deposit of "
        + new Money(deposit.all()).format(currency)
        + " counts as held again. "
        + new Money(deposit.back()).format(currency)
        + " of it was noted as given back: is it still here?";
  }

  private void askedBack(List<ItemId> items, List<String> said) {
    concerns.ofItems(items).values().stream()
        .map(Against::dangers)
        .flatMap(List::stream)
        .map(one -> "A danger stands against what is then out: ask it back at once. " + one.said())
        .distinct()
        .forEach(said::add);
  }
}
