package club.ascham.changes;

import club.ascham.id.ItemId;
import club.ascham.loan.LoanLine;
import club.ascham.register.RetireItem;
import club.ascham.register.RetiredWhy;
import club.ascham.register.Retirement;
import club.ascham.rig.LoseParts;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Takes lost things out of the club's stock. */
@ApplicationScoped
class LostItems {
  private final Rows rows;
  private final LoseParts loseParts;
  private final RetireItem retireItem;

  LostItems(Rows rows, LoseParts loseParts, RetireItem retireItem) {
    this.rows = rows;
    this.loseParts = loseParts;
    this.retireItem = retireItem;
  }

  /** Arrows out of a pool are counted off; anything else comes off its rig and is retired. */
  void takeOut(List<LoanLine> lost, Instant at, LocalDate today, String words) {
    List<ItemId> items =
        lost.stream().filter(line -> line.arrowCount() == null).map(LoanLine::item).toList();
    loseParts.lose(items, at);
    items.forEach(item -> retireItem.retire(item, new Retirement(today, RetiredWhy.LOST, words)));
    lost.stream()
        .filter(line -> line.arrowCount() != null)
        .forEach(
            line ->
                rows.change(
                    "UPDATE kit_item SET arrow_count = max(0, arrow_count - ?2) WHERE id = ?1",
                    line.item(),
                    line.arrowCount()));
  }
}
