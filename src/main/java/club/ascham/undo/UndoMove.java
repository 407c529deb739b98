package club.ascham.undo;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.id.MoveId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Undoes a press: what it said of the world is so no more, and both stay told. What was told with
 * it (a report, a withdrawal, work asked for) stands, since somebody saw it.
 */
@ApplicationScoped
class UndoMove {
  private final MoveFacts facts;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  UndoMove(MoveFacts facts, Rows rows, Story story, Actor actor, ClubTime time) {
    this.facts = facts;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Why this person may not undo it now; empty: they may. */
  Optional<String> refusal(Move move) {
    if (actor.role() == Role.COMMITTEE) {
      return Optional.of("The committee looks on.");
    }
    MayUndo.Press press = press(move);
    Optional<String> early = MayUndo.byTimeAndHand(press, actor.isOfficer(), time.today());
    return early.isPresent()
        ? early
        : MayUndo.refusal(press, actor.isOfficer(), time.today(), facts.since(move));
  }

  private MayUndo.Press press(Move move) {
    return new MayUndo.Press(
        move.kind(), time.dayOf(move.madeAt()), move.madeBy().equals(actor.id()), move.isUndone());
  }

  @Writes
  Outcome<MoveId> undo(long id) {
    Move move =
        facts.one(id).orElseThrow(() -> new NoSuchThing("There is no press " + id + " to undo."));
    Optional<String> refusal = refusal(move);
    if (refusal.isPresent()) {
      return Outcome.refused(Refusal.now("Not undone", "move", refusal.get()));
    }
    List<MoveFacts.Line> lines = facts.lines(id);
    rows.change(
        "UPDATE move SET undone_at = max(?2, made_at), undone_by = ?3 WHERE id = ?1",
        id,
        time.now(),
        actor.id());
    String sentence =
        switch (move.kind()) {
          case RECEIPT, SESSION_RETURN -> outAgain(move, lines);
          case EXCHANGE -> exchangedBack(move, lines);
          case PUT_BACK -> toBePutBack(move);
        };
    tell(move, lines, sentence);
    return Outcome.done(new MoveId(id), sentence);
  }

  private String outAgain(Move move, List<MoveFacts.Line> lines) {
    rows.change(
        "UPDATE bow_check SET released_at = NULL, released_by = NULL WHERE released_at IS NOT NULL"
            + " AND id IN (SELECT check_id FROM moved WHERE move_id = ?1)",
        move.id());
    lines.forEach(this::goesOutAgain);
    rows.change(
        """
        UPDATE loan SET deposit_back_minor = NULL, deposit_kept_why = NULL, version = version + 1
         WHERE id = ?1 AND deposit_back_minor IS NOT NULL""",
        move.loan());
    return "Undone: "
        + (move.session() ? "the return of session " : "the receipt of loan ")
        + move.loan().value()
        + ", pressed too early. Out as before: "
        + codes(lines)
        + ".";
  }

  private String exchangedBack(Move move, List<MoveFacts.Line> lines) {
    List<MoveFacts.Line> given = lines.stream().filter(line -> !line.cameIn()).toList();
    List<MoveFacts.Line> handedBack = lines.stream().filter(MoveFacts.Line::cameIn).toList();
    // What was fitted comes off before the part that was there: a place takes one.
    given.forEach(this::neverWent);
    handedBack.stream().filter(MoveFacts.Line::isPart).forEach(this::isFittedAgain);
    handedBack.forEach(this::goesOutAgain);
    lines.stream()
        .map(MoveFacts.Line::rig)
        .filter(Objects::nonNull)
        .distinct()
        .forEach(rig -> rows.change("UPDATE rig SET version = version + 1 WHERE id = ?1", rig));
    return "Undone: an exchange on loan "
        + move.loan().value()
        + ", pressed too early."
        + (handedBack.isEmpty() ? "" : " Out as before: " + codes(handedBack) + ".")
        + (given.isEmpty() ? "" : " Not given out: " + codes(given) + ".");
  }

  private String toBePutBack(Move move) {
    rows.change(
        "UPDATE bow_check SET released_at = NULL, released_by = NULL WHERE id = ?1", move.check());
    return "Undone: put back too early. The bow waits to be put back.";
  }

  private void goesOutAgain(MoveFacts.Line line) {
    if (line.missing() != null && line.missing() > 0) {
      rows.change(
          "UPDATE kit_item SET arrow_count = arrow_count + ?2 WHERE id = ?1",
          line.item(),
          line.missing());
    }
    rows.change(
        """
        UPDATE loan_line SET back_at = NULL, receipt_id = NULL, outcome = NULL, back_count = NULL, shots = NULL,
               missing_count = NULL
         WHERE id = ?1""",
        line.id());
  }

  /** What was given out by mistake ends as it began. */
  private void neverWent(MoveFacts.Line line) {
    rows.change(
        "UPDATE loan_line SET back_at = out_at, outcome = 'CHANGED' WHERE id = ?1", line.id());
    if (!line.isPart()) {
      return;
    }
    rows.change(
        """
        UPDATE bowstring SET first_used = NULL WHERE id = ?1
           AND NOT EXISTS (SELECT 1 FROM fitting f WHERE f.item_id = ?1 AND f.until_at IS NOT NULL)
           AND first_used = ?2""",
        line.item(),
        time.dayOf(fittedAt(line)));
    rows.change(
        "UPDATE fitting SET until_at = from_at WHERE rig_id = ?1 AND item_id = ?2 AND until_at IS NULL",
        line.rig(),
        line.item());
    if (line.keptWith() != null) {
      rows.change(
          "INSERT INTO kept_with (item_id, rig_id) VALUES (?1, ?2)", line.item(), line.keptWith());
    }
  }

  private record Fitted(Instant at) {}

  private Instant fittedAt(MoveFacts.Line line) {
    return rows.one(
            Fitted.class,
            "SELECT from_at FROM fitting WHERE rig_id = ?1 AND item_id = ?2 AND until_at IS NULL",
            line.rig(),
            line.item())
        .orElseThrow()
        .at();
  }

  private void isFittedAgain(MoveFacts.Line line) {
    rows.change(
        """
        UPDATE fitting SET until_at = NULL
         WHERE id = (SELECT id FROM fitting WHERE rig_id = ?1 AND item_id = ?2 ORDER BY until_at DESC, id DESC LIMIT 1)""",
        line.rig(),
        line.item());
    rows.change("DELETE FROM kept_with WHERE item_id = ?1", line.item());
  }

  private static String codes(List<MoveFacts.Line> lines) {
    return lines.stream().map(MoveFacts.Line::code).collect(Collectors.joining(", "));
  }

  private void tell(Move move, List<MoveFacts.Line> lines, String sentence) {
    Set<RigId> rigs = new LinkedHashSet<>();
    List<ItemId> items = new ArrayList<>();
    lines.forEach(
        line -> {
          items.add(line.item());
          if (line.rig() != null) {
            rigs.add(line.rig());
          }
        });
    if (move.rig() != null) {
      rigs.add(move.rig());
      items.addAll(facts.partsOf(move.rig()));
    }
    story.tell(new Story.Told(time.now(), actor.id(), sentence, null, move.loan(), items, rigs));
  }
}
