package club.ascham.store;

import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;

/**
 * The database refused a change that no page should have let through, or that someone else's change
 * made impossible a moment ago. Nothing was changed.
 */
public class DatabaseRefusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private static final Map<String, String> SAID =
      Map.ofEntries(
          Map.entry("fitted-part-is-retired", "That part is retired: it can't be fitted."),
          Map.entry(
              "fitted-part-is-withdrawn",
              "That part is withdrawn: it can't be fitted until it is released."),
          Map.entry("fitted-part-has-wrong-place", "That kind of part doesn't go there."),
          Map.entry("one-piece-bow-takes-no-limbs", "A one-piece bow takes no limbs."),
          Map.entry("rig-is-dissolved", "That rig was taken apart."),
          Map.entry("rig-is-on-loan", "That rig is on loan: receive it first."),
          Map.entry("rig-still-has-parts", "That rig still has parts fitted."),
          Map.entry("retired-item-is-fitted", "It is still fitted to a rig: take it off first."),
          Map.entry(
              "retired-item-is-on-loan",
              "It is on loan: receive it first, or report it lost there."),
          Map.entry("item-code-and-kind-are-fixed", "A code and a kind never change."),
          Map.entry("lent-item-is-retired", "One of these was retired meanwhile."),
          Map.entry(
              "lent-item-is-blocked",
              "Something keeps one of these in: look at what stands against it."),
          Map.entry("report-is-answered", "That was answered already: the answer stands."),
          Map.entry(
              "released-bow-has-an-open-report",
              "Something was told of this bow and is not answered: answer it first."),
          Map.entry(
              "kept-as-it-is",
              "It is kept as it is after an accident: nothing of it is fitted, taken off, adjusted,"
                  + " checked, inspected, decided, exchanged, released or retired until an officer"
                  + " ends that."),
          Map.entry(
              "sold-item-is-withdrawn",
              "It is withdrawn: it is not sold or given away before someone with the permit releases"
                  + " it."),
          Map.entry("lent-item-is-withdrawn", "One of these was withdrawn meanwhile."),
          Map.entry(
              "lent-part-is-not-fitted-to-that-rig", "The rig's parts were changed meanwhile."),
          Map.entry("lent-rig-has-a-withdrawn-part", "A part of that rig was withdrawn meanwhile."),
          Map.entry("lent-rig-has-no-complete-set-up", "That rig has no complete set-up figures."),
          Map.entry("lent-pool-has-too-few-arrows", "The pool no longer has that many arrows."),
          Map.entry("pool-is-lent-by-count", "Arrows of a pool are given out by count."),
          Map.entry(
              "released-before-decided",
              "What it needs is not decided yet: decide that first, then it may be released."),
          Map.entry(
              "released-before-looked-at",
              "A release says what was looked at and by whom: this one does not."),
          Map.entry(
              "released-before-passed",
              "The work that was asked for is not passed yet: it can't be released before."),
          Map.entry(
              "released-though-failed",
              "An inspection of it was not passed, and none since: it can't be released before."),
          Map.entry("loan_line.item_id", "Someone else lent that a moment ago: it is on loan now."),
          Map.entry("fitting.item_id", "That part was fitted to another rig a moment ago."),
          Map.entry(
              "fitting.rig_id", "That place on the rig is taken: take the other part off first."),
          Map.entry(
              "what-was-decided-stays",
              "What a check decided stays as it was given: check the bow again, and correct it."),
          Map.entry(
              "no-verdict-says-that",
              "A verdict says words on one line, and no length beyond 3 m."),
          Map.entry("undone-once", "It was undone already: both presses stay as they are told."),
          Map.entry("a-press-is-never-changed", "What was pressed stays as it was pressed."),
          Map.entry("a-press-is-never-deleted", "What was pressed is undone, and never deleted."),
          Map.entry(
              "reopened-without-an-undo",
              "What came back goes out by a new issue, or by undoing the press that took it in."),
          Map.entry(
              "undone-though-lent-since",
              "It was lent again since: that loan rests on its return."),
          Map.entry(
              "undone-though-kept-in-since",
              "Something keeps it in since it came back: look at what stands against it."),
          Map.entry("borrower-is-forgotten", "Whoever had it was forgotten since, as they asked."),
          Map.entry("withdrawal.item_id", "It is withdrawn already."),
          Map.entry("set_up.rig_id", "A set-up of that rig was begun already."),
          Map.entry("item.code", "That code is taken by another item."),
          Map.entry("account.name", "That name is taken by another account."));

  private final String rule;

  private DatabaseRefusal(String rule, String message, Throwable cause) {
    super(message, cause);
    this.rule = rule;
  }

  /** The trigger's name, or table and column of the constraint. */
  public String rule() {
    return rule;
  }

  /** The refusal behind a failure of Hibernate, JTA or JDBC, where one of the named rules spoke. */
  public static Optional<DatabaseRefusal> in(Throwable failure) {
    for (Throwable t = failure; t != null; t = t.getCause()) {
      if (t instanceof DatabaseRefusal already) {
        return Optional.of(already);
      }
      if (t instanceof SQLException sql && sql.getMessage() != null) {
        String words = sql.getMessage();
        for (Map.Entry<String, String> rule : SAID.entrySet()) {
          if (words.contains(rule.getKey())) {
            return Optional.of(new DatabaseRefusal(rule.getKey(), rule.getValue(), failure));
          }
        }
      }
    }
    return Optional.empty();
  }
}
