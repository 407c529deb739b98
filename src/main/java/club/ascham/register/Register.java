package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the register's list: two statements, whatever it holds. */
@ApplicationScoped
class Register {
  static final int PAGE = 40;

  private static final String URGENT_FIRST =
      "WITHDRAWN TO_BE_CHECKED IN_THE_WORKSHOP ON_LOAN READY RETIRED";

  /** Everything that a search may ask about; the state is asked for only where it matters. */
  private static final String FOUND =
      """
       FROM item i
       LEFT JOIN riser ri ON ri.id = i.id
       LEFT JOIN limbs li ON li.id = i.id
       LEFT JOIN bow b ON b.id = i.id
       LEFT JOIN bowstring bs ON bs.id = i.id
       LEFT JOIN stringer st ON st.id = i.id
       LEFT JOIN kit_item k ON k.id = i.id
      """;

  private static final String WITH_STATE = " JOIN item_standing s ON s.item_id = i.id ";

  private static final String ROWS =
      """
      SELECT i.id, i.code AS bare_code, i.kind, i.maker, i.model, i.bought_on,
             coalesce(ri.build, li.build) AS build, coalesce(ri.hand, b.hand, k.hand) AS hand, ri.length_in,
             coalesce(ri.limb_fitting, li.limb_fitting) AS fitting, li.size AS limb_size,
             coalesce(li.bow_length_in, b.bow_length_in, bs.for_bow_in) AS bow_in,
             coalesce(li.marked_lb, b.marked_lb) AS marked_lb, bs.material, bs.strands, st.bow_from_in,
             st.bow_to_in, k.size, k.arrow_length, k.spine, k.arrow_count, coalesce(k.pool, 0) AS pool,
             %s AS state, s.loan_id, (SELECT o.due_on FROM loan o WHERE o.id = s.loan_id) AS due_back, coalesce(s.rig_id, kw.rig_id) AS rig, s.rig_id IS NULL AND kw.rig_id IS NOT NULL AS kept_with,
             bi.code AS rig_code
      """
          .formatted(Standing.STATE_TODAY);

  private static final String AND_WHERE_IT_IS =
      """
       LEFT JOIN kept_with kw ON kw.item_id = i.id
       LEFT JOIN fitting bf ON bf.rig_id = coalesce(s.rig_id, kw.rig_id) AND bf.place = 'BODY' AND bf.until_at IS NULL
       LEFT JOIN item bi ON bi.id = bf.item_id
      """;

  private final Rows rows;

  Register(Rows rows) {
    this.rows = rows;
  }

  /** How many of one kind a search finds. */
  record KindCount(ItemKind kind, long count) {}

  /** How many of each kind a search finds, whichever kind it is narrowed to. */
  List<KindCount> counts(RegisterSearch search, LocalDate today) {
    Conditions conditions = new Conditions(search.of(null), List.of(), today);
    return rows.list(
        KindCount.class,
        "SELECT i.kind, count(*) AS count" + conditions.from() + " GROUP BY i.kind",
        conditions.parameters());
  }

  /** How many of some kinds a search finds. */
  long count(RegisterSearch search, Collection<ItemKind> kinds, LocalDate today) {
    Conditions conditions = new Conditions(search, kinds, today);
    return rows.number("SELECT count(*)" + conditions.from(), conditions.parameters());
  }

  /** One page of what a search finds. */
  List<RegisterRow> page(RegisterSearch search, LocalDate today) {
    return page(search, List.of(), PAGE, today);
  }

  /**
   * One page of what a search finds among some kinds.
   *
   * @param kinds none: every kind
   */
  List<RegisterRow> page(
      RegisterSearch search, Collection<ItemKind> kinds, int size, LocalDate today) {
    Conditions conditions = new Conditions(search, kinds, today);
    String order = order(search);
    String limit = " LIMIT " + size + " OFFSET " + (search.page() - 1L) * size;
    // The page's items are chosen first, so that only their states are worked out.
    return rows.list(
        RegisterRow.class,
        ROWS
            + FOUND
            + WITH_STATE
            + AND_WHERE_IT_IS
            + " WHERE i.id IN (SELECT i.id"
            + conditions.from()
            + order
            + limit
            + ")"
            + order,
        conditions.parameters());
  }

  /** The line of one item. */
  Optional<RegisterRow> row(ItemId id, LocalDate today) {
    return rows.one(
        RegisterRow.class,
        ROWS + FOUND + WITH_STATE + AND_WHERE_IT_IS + " WHERE i.id = ?2",
        today,
        id);
  }

  /** The items registered last, each standing for its like. */
  List<RegisterRow> latest(ItemKind kind, LocalDate today, int atMost) {
    return rows.list(
        RegisterRow.class,
        ROWS
            + FOUND
            + WITH_STATE
            + AND_WHERE_IT_IS
            + """
               WHERE i.id IN (SELECT max(x.id) FROM item x
                               WHERE x.kind = ?2 AND x.retired_on IS NULL
                               GROUP BY x.maker, x.model, x.batch ORDER BY max(x.id) DESC LIMIT ?3)
               ORDER BY i.id DESC""",
        today,
        kind,
        atMost);
  }

  /** What is known so far in a column of names, for offering it: {@code maker}, {@code model}. */
  List<String> known(String column, ItemKind kind) {
    if (!column.equals("maker") && !column.equals("model")) {
      throw new IllegalArgumentException(column);
    }
    return rows.texts(
        "SELECT "
            + column
            + " FROM item WHERE kind = ?1 AND "
            + column
            + " IS NOT NULL"
            + " GROUP BY 1 ORDER BY max(id) DESC LIMIT 30",
        kind);
  }

  private static String order(RegisterSearch search) {
    String way = search.backwards() ? " DESC" : "";
    String by =
        switch (search.sort()) {
          case CODE -> "instr('RLBSTAK', substr(i.code, 1, 1))" + way + ", i.code" + way;
          case MAKER -> "i.maker IS NULL, i.maker" + way + ", i.model" + way;
          case STATE -> "instr('" + URGENT_FIRST + "', " + Standing.STATE_TODAY + ")" + way;
          case BOUGHT -> "i.bought_on IS NULL, i.bought_on" + way;
        };
    return " ORDER BY " + by + ", i.code";
  }

  /** The WHERE of a search with its parameters; today is always the first. */
  private static final class Conditions {
    private final List<String> conditions = new ArrayList<>();
    private final List<Object> parameters = new ArrayList<>();
    private final boolean needsState;

    Conditions(RegisterSearch search, Collection<ItemKind> kinds, LocalDate today) {
      parameters.add(today);
      conditions.add("?1 IS NOT NULL");
      needsState = search.state() != null || search.sort() == RegisterSearch.Sort.STATE;
      for (String word : search.words()) {
        String like = with("%" + escaped(word) + "%");
        String bare = with("%" + escaped(word.replace("-", "")) + "%");
        conditions.add(
            "(i.code LIKE "
                + bare
                + " ESCAPE '\\'"
                + " OR concat_ws(' ', i.maker, i.model, i.batch, i.serial, li.serial_upper,"
                + " li.serial_lower, k.size, i.notes, i.kind) LIKE "
                + like
                + " ESCAPE '\\')");
      }
      if (search.kind() != null) {
        conditions.add("i.kind = " + with(search.kind()));
      }
      if (!kinds.isEmpty()) {
        conditions.add(
            "i.kind IN (" + kinds.stream().map(this::with).collect(Collectors.joining(", ")) + ")");
      }
      if (search.state() != null) {
        conditions.add(Standing.STATE_TODAY + " = " + with(search.state()));
      } else if (!search.retiredToo()) {
        conditions.add("i.retired_on IS NULL");
      }
      if (search.hand() != null) {
        conditions.add("coalesce(ri.hand, b.hand, k.hand) = " + with(search.hand()));
      }
      if (search.bowIn() != null) {
        conditions.add(usableOn(with(search.bowIn())));
      }
    }

    String from() {
      return FOUND + (needsState ? WITH_STATE : "") + " WHERE " + String.join(" AND ", conditions);
    }

    Object[] parameters() {
      return parameters.toArray();
    }

    private String with(Object parameter) {
      parameters.add(parameter);
      return "?" + parameters.size();
    }

    private static String escaped(String word) {
      return word.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_");
    }

    /**
     * What can be part of a bow of this length: as {@link club.ascham.bow.BowLength} reckons, a
     * riser with short, medium or long limbs makes 41, 43 or 45 in more than its own length.
     */
    private static String usableOn(String inches) {
      return """
          (coalesce(li.bow_length_in, b.bow_length_in, bs.for_bow_in) = #
           OR # BETWEEN st.bow_from_in AND st.bow_to_in
           OR (ri.build = 'ADJUSTABLE' AND # - ri.length_in IN (41, 43, 45))
           OR (ri.build = 'SCREW_IN' AND EXISTS (SELECT 1 FROM limbs x JOIN item xi ON xi.id = x.id
                WHERE x.bow_length_in = # AND xi.model = ri.limb_model COLLATE NOCASE))
           OR (li.size IS NOT NULL AND EXISTS (SELECT 1 FROM riser x JOIN item xi ON xi.id = x.id
                WHERE xi.retired_on IS NULL AND x.limb_fitting = li.limb_fitting COLLATE NOCASE
                  AND # - x.length_in = CASE li.size WHEN 'SHORT' THEN 41 WHEN 'MEDIUM' THEN 43 ELSE 45 END)))"""
          .replace("#", inches);
    }
  }
}
