package club.ascham.home;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds what was typed or scanned: a code, a person's name, or a few words. */
@ApplicationScoped
class CodeBox {
  private static final int LISTED_AT_MOST = 40;
  private static final int WORDS_AT_MOST = 6;

  private static final String ITEMS =
      """
      SELECT i.code, i.kind, i.maker, i.model, i.serial, %s AS state, s.loan_id, s.rig_id, r.state_today AS rig_state,
             coalesce(r.needs_check, 0) AS rig_needs_check, i.id
        FROM item i
        JOIN item_standing s ON s.item_id = i.id
        LEFT JOIN (SELECT s.rig_id, s.needs_check, %s AS state_today FROM rig_standing s) r
          ON r.rig_id = s.rig_id
      """
          .formatted(Standing.STATE_TODAY, Standing.STATE_TODAY);

  private static final String ITEM_WORDS =
      """
      lower(CASE i.kind WHEN 'BOW' THEN 'one-piece bow' ELSE i.kind END || 's ' || i.code || ' '
        || substr(i.code, 1, 1) || '-' || substr(i.code, 2, 4) || '-' || substr(i.code, 6) || ' '
        || coalesce(i.maker, '') || ' ' || coalesce(i.model, '') || ' ' || coalesce(i.serial, '') || ' '
        || coalesce(i.batch, '') || ' ' || coalesce(li.serial_upper, '') || ' ' || coalesce(li.serial_lower, '')
        || ' ' || coalesce(ri.hand, bo.hand, k.hand, ''))""";

  private final Rows rows;
  private final Concerns concerns;

  CodeBox(Rows rows, Concerns concerns) {
    this.rows = rows;
    this.concerns = concerns;
  }

  /**
   * @param hand whether the person asking may change things; only they look people up by name
   */
  Found find(String typed, boolean hand, LocalDate today) {
    CodeParse parse = ItemCode.parse(typed);
    if (parse instanceof CodeParse.OfItem found) {
      return labelled(found.item(), hand, today);
    }
    if (parse instanceof CodeParse.WrongCheck wrong) {
      return new Found.Nothing(wrong.message());
    }
    return named(typed, hand, today);
  }

  private Found labelled(ItemCode code, boolean hand, LocalDate today) {
    return rows.one(FoundItem.class, ITEMS + " WHERE i.code = ?2", today, code)
        .<Found>map(item -> new Found.One(WhatNext.of(item, hand)))
        .orElseGet(
            () ->
                new Found.Nothing(
                    "The club has no item with the code %s.".formatted(code.display())));
  }

  private Found named(String typed, boolean hand, LocalDate today) {
    List<String> words =
        Arrays.stream(folded(typed).split("\\s+"))
            .filter(word -> !word.isEmpty())
            .limit(WORDS_AT_MOST)
            .toList();
    if (words.isEmpty()) {
      return new Found.Nothing("Type a code, a name, or a few words.");
    }
    List<FoundPerson> people = hand ? people(words) : List.of();
    List<FoundItem> items = items(words, today);
    List<FoundItem> listed = head(items);
    return Found.among(
        head(people),
        listed,
        keptIn(listed),
        people.size() > LISTED_AT_MOST || items.size() > LISTED_AT_MOST,
        hand,
        typed.strip());
  }

  /** What keeps in each of these, or the rig that it is fitted to; no entry: nothing does. */
  private Map<ItemId, Concern> keptIn(List<FoundItem> items) {
    Map<RigId, Against> rigs =
        concerns.ofRigs(
            items.stream().map(FoundItem::rig).filter(Objects::nonNull).distinct().toList());
    Map<ItemId, Against> loose =
        concerns.ofItems(
            items.stream().filter(item -> item.rig() == null).map(FoundItem::id).toList());
    Map<ItemId, Concern> kept = new HashMap<>();
    for (FoundItem item : items) {
      (item.rig() == null ? loose.get(item.id()) : rigs.get(item.rig()))
          .heaviest()
          .filter(Concern::blocks)
          .ifPresent(heaviest -> kept.put(item.id(), heaviest));
    }
    return kept;
  }

  private List<FoundPerson> people(List<String> words) {
    return rows.list(
        FoundPerson.class,
        """
        WITH still_out AS (SELECT l.* FROM loan l WHERE l.id IN (SELECT x.loan_id FROM loan_line x WHERE x.back_at IS NULL))
        SELECT * FROM (
          SELECT b.id AS borrower, b.name AS name, l.id AS loan_id, l.due_on AS due_on
            FROM borrower b LEFT JOIN still_out l ON l.borrower_id = b.id
           WHERE %s OR b.member_no = ?1
          UNION ALL
          SELECT NULL, l.leader, l.id, l.due_on FROM still_out l WHERE l.kind = 'SESSION' AND %s)
         ORDER BY loan_id IS NULL, due_on, name LIMIT %d"""
            .formatted(
                allIn("lower(b.name)", words, 1),
                allIn("lower(l.leader)", words, 1),
                LISTED_AT_MOST + 1),
        words.toArray());
  }

  private List<FoundItem> items(List<String> words, LocalDate today) {
    List<Object> parameters = new ArrayList<>(List.of(today));
    parameters.addAll(words);
    return rows.list(
        FoundItem.class,
        ITEMS
            + """
               LEFT JOIN limbs li ON li.id = i.id
               LEFT JOIN riser ri ON ri.id = i.id
               LEFT JOIN bow bo ON bo.id = i.id
               LEFT JOIN kit_item k ON k.id = i.id
              WHERE %s ORDER BY i.retired_on IS NOT NULL, i.kind, i.code LIMIT %d"""
                .formatted(allIn(ITEM_WORDS, words, 2), LISTED_AT_MOST + 1),
        parameters.toArray());
  }

  /** Every word stands somewhere in the text. */
  private static String allIn(String text, List<String> words, int firstParameter) {
    return IntStream.range(0, words.size())
        .mapToObj(n -> "instr(" + text + ", ?" + (firstParameter + n) + ") > 0")
        .collect(Collectors.joining(" AND ", "(", ")"));
  }

  private static <T> List<T> head(List<T> all) {
    return all.subList(0, Math.min(all.size(), LISTED_AT_MOST));
  }

  /** In lower case as the database has it: ASCII letters alone change. */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    for (char c : text.toCharArray()) {
      folded.append(c >= 'A' && c <= 'Z' ? (char) (c - 'A' + 'a') : c);
    }
    return folded.toString();
  }
}
