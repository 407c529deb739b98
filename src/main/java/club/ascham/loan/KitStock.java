package club.ascham.loan;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.id.ItemId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads what may go out beside a bow. */
@ApplicationScoped
public class KitStock {
  private static final String COLUMNS =
      "SELECT i.id, i.code AS bare_code, i.kind, i.maker, i.model, k.hand, k.size, k.arrow_length,"
          + " k.arrow_mass_gr, k.arrow_count, coalesce(k.pool, 0) AS pool, coalesce(k.arrow_count, 0) -"
          + " coalesce((SELECT sum(o.arrow_count) FROM loan_line o WHERE o.item_id = i.id AND"
          + " o.back_at IS NULL), 0) AS left, t.stringer_kind, t.bow_from_in, t.bow_to_in, b.for_bow_in,"
          + " b.material, "
          + Standing.STATE_TODAY
          + " AS state, s.rig_id AS fitted_to, w.rig_id AS kept_with, s.loan_id,"
          + " (SELECT max(p.back_at) FROM loan_line p WHERE p.item_id = i.id) AS last_back"
          + " FROM item i JOIN item_standing s ON s.item_id = i.id"
          + " LEFT JOIN kit_item k ON k.id = i.id LEFT JOIN stringer t ON t.id = i.id"
          + " LEFT JOIN bowstring b ON b.id = i.id LEFT JOIN kept_with w ON w.item_id = i.id ";

  private final Rows rows;
  private final Concerns concerns;

  KitStock(Rows rows, Concerns concerns) {
    this.rows = rows;
    this.concerns = concerns;
  }

  /** Everything that could go out beside a bow today, by code. */
  public List<Offered> ready(LocalDate today) {
    return offered(
            rows.list(
                Lendable.class,
                COLUMNS
                    + "WHERE i.retired_on IS NULL AND i.kind NOT IN ('RISER', 'LIMBS', 'BOW',"
                    + " 'STRING') AND s.state_if_inspected = 'READY' AND (s.blocked_from IS NULL OR"
                    + " s.blocked_from >= ?1) ORDER BY i.code",
                today))
        .stream()
        .filter(one -> !one.against().blocks())
        .toList();
  }

  private List<Offered> offered(List<Lendable> items) {
    Map<ItemId, Against> against = concerns.ofItems(items.stream().map(Lendable::id).toList());
    return items.stream().map(item -> new Offered(item, against.get(item.id()))).toList();
  }

  /** The items of these codes that exist, by code. */
  public Map<String, Offered> coded(Collection<ItemAsked> asked, LocalDate today) {
    if (asked.isEmpty()) {
      return Map.of();
    }
    String codes =
        asked.stream()
            .map(ItemAsked::code)
            .map(ItemCode::bare)
            .collect(Collectors.joining("\",\"", "[\"", "\"]"));
    return offered(
            rows.list(
                Lendable.class,
                COLUMNS + "WHERE i.code IN (SELECT value FROM json_each(?2))",
                today,
                codes))
        .stream()
        .collect(Collectors.toMap(one -> one.item().bareCode(), Function.identity()));
  }
}
