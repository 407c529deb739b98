package club.ascham.accident;

import club.ascham.story.Story;

/** The statements that read the past of items, whose ids come as a JSON array in {@code ?1}. */
final class HistorySql {
  private HistorySql() {}

  private static final String OF_ITEMS = " FROM json_each(?1) t ";

  /** A rig's facts belong to what was fitted to it when they happened. */
  private static String whileFitted(String table, String moment) {
    return OF_ITEMS
        + "JOIN fitting f ON f.item_id = t.value JOIN %1$s x ON x.rig_id = f.rig_id AND x.%2$s >= f.from_at AND (f.until_at IS NULL OR x.%2$s <= f.until_at) "
            .formatted(table, moment);
  }

  /** The code on the body of a rig at a moment. */
  private static String bodyOf(String rig, String moment) {
    return "(SELECT c.code FROM fitting b JOIN item c ON c.id = b.item_id WHERE b.rig_id = %s AND b.place = 'BODY' AND b.from_at <= %s ORDER BY b.from_at DESC LIMIT 1)"
        .formatted(rig, moment);
  }

  static final String FITTED =
      "SELECT t.value AS item, f.rig_id, "
          + bodyOf("f.rig_id", "coalesce(f.until_at, '9999')")
          + " AS bare_code, f.from_at AS \"from\", f.until_at AS until"
          + OF_ITEMS
          + "JOIN fitting f ON f.item_id = t.value";

  static final String SET_UPS =
      "SELECT t.value AS item, x.rig_id, "
          + bodyOf("x.rig_id", "x.finished_at")
          + " AS bare_code, x.finished_at AS at, x.brace, x.brace_from, x.tiller_upper, x.tiller_lower, x.nocking, x.screws_seen AS locking_screws_seen, x.turns_upper, x.turns_lower, x.twists, p.name AS \"by\""
          + whileFitted("set_up", "finished_at")
          + "JOIN account p ON p.id = x.finished_by";

  static final String CHECKS =
      "SELECT t.value AS item, x.rig_id, "
          + bodyOf("x.rig_id", "x.happened_at")
          + " AS bare_code, x.happened_at AS at, x.kind, x.brace, x.brace_from AS reading_from, x.tiller_upper, x.tiller_lower, x.dry_loose_or_fall, x.came_back_strung, x.verdict, x.id,"
          + " (SELECT group_concat(lower(s.part) || ': ' || s.words, '; ') FROM check_sign s WHERE s.check_id = x.id AND s.gravity <> 'FINE') AS signs,"
          + " x.corrects_id, p.name AS \"by\", x.released_at, r.name AS released_by"
          + whileFitted("bow_check", "happened_at")
          + "JOIN account p ON p.id = x.checked_by AND x.id NOT IN (SELECT check_id FROM undone_look) LEFT JOIN account r ON r.id = x.released_by";

  static final String ADJUSTMENTS =
      "SELECT t.value AS item, x.rig_id, "
          + bodyOf("x.rig_id", "x.happened_at")
          + " AS bare_code, x.happened_at AS at, x.twists_added AS twists, x.upper_in, x.lower_in, x.words, p.name AS \"by\""
          + whileFitted("adjustment", "happened_at")
          + "JOIN account p ON p.id = x.done_by";

  static final String UPKEEP =
      "SELECT t.value AS item, x.happened_at AS at, x.work, x.result, x.found, x.measured, x.parts_used, c.code AS replaced_by, p.name AS \"by\""
          + OF_ITEMS
          + "JOIN upkeep_record x ON x.item_id = t.value JOIN account p ON p.id = x.done_by LEFT JOIN item c ON c.id = x.replaced_by";

  static final String ASKED_FOR =
      "SELECT t.value AS item, x.opened_at AS at, x.work, x.why, x.blocks, p.name AS \"by\""
          + OF_ITEMS
          + "JOIN upkeep_task x ON x.item_id = t.value JOIN account p ON p.id = x.opened_by";

  static final String WITHDRAWALS =
      "SELECT t.value AS item, x.happened_at AS at, x.why, x.work, p.name AS \"by\", x.released_at, x.release_why, r.name AS released_by"
          + OF_ITEMS
          + "JOIN withdrawal x ON x.item_id = t.value JOIN account p ON p.id = x.withdrawn_by LEFT JOIN account r ON r.id = x.released_by";

  static final String REPORTS =
      "SELECT t.value AS item, x.happened_at AS at, x.dangerous, (SELECT group_concat(s.sign) FROM report_sign s WHERE s.report_id = x.id) AS signs,"
          + " x.words, p.name AS \"by\", x.answered_at, x.answer, x.answer_words, r.name AS answered_by"
          + OF_ITEMS
          + "JOIN report_part k ON k.item_id = t.value JOIN report x ON x.id = k.report_id JOIN account p ON p.id = x.told_to LEFT JOIN account r ON r.id = x.answered_by";

  static final String LOANS =
      "SELECT t.value AS item, l.id AS loan, l.kind = 'SESSION' AS session, coalesce(b.name, l.leader) AS who, x.rig_id, "
          + bodyOf("x.rig_id", "x.out_at")
          + " AS bare_code, x.out_at AS out, l.due_on, p.name AS \"by\", x.back_at AS back, x.outcome, x.shots, r.dry_loose_or_fall, r.came_back_strung, r.words, q.name AS received_by"
          + OF_ITEMS
          + "JOIN loan_line x ON x.item_id = t.value JOIN loan l ON l.id = x.loan_id AND x.id NOT IN (SELECT line_id FROM undone_line)"
          + " JOIN account p ON p.id = l.issued_by"
          + " LEFT JOIN borrower b ON b.id = l.borrower_id LEFT JOIN receipt r ON r.id = x.receipt_id LEFT JOIN account q ON q.id = r.received_by";

  static final String WEIGHED =
      "SELECT t.value AS item, x.happened_at AS at, x.draw_in, x.force_lb, p.name AS \"by\""
          + OF_ITEMS
          + "JOIN scale_reading x ON x.item_id = t.value JOIN account p ON p.id = x.weighed_by";

  static final String STORIES =
      "SELECT a.item_id, s.id, s.happened_at AS happened, s.recorded_at AS recorded, coalesce(p.name, 'Ascham') AS \"by\", s.sentence, s.why, substr(s.hash, 1, 12) AS seal,"
          + Story.TakenIn.OF_ENTRY
          + OF_ITEMS
          + "JOIN story_about a ON a.item_id = t.value JOIN story s ON s.id = a.story_id LEFT JOIN account p ON p.id = s.account_id"
          + " ORDER BY s.happened_at, s.id";
}
