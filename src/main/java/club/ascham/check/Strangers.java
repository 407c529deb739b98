package club.ascham.check;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.rig.RigCard;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/**
 * What a code stands for that is on a bow and not on its list: one rule and one set of words for a
 * check, a receipt and a session's return.
 *
 * <p>At a check it is judged; at the other two the bow is taken back first and the answer done
 * after. What can't be done takes the whole receipt back.
 */
@ApplicationScoped
public class Strangers {
  private final Rows rows;

  Strangers(Rows rows) {
    this.rows = rows;
  }

  /** What a code that is on a bow and not on its list turns out to be. */
  sealed interface Found {
    /** A part of a bow that belongs elsewhere. */
    record OnIt(Stranger stranger) implements Found {}

    /** Nothing that could be on it and is not listed. */
    record Wrong(String message) implements Found {}
  }

  Found on(RigCard card, ItemCode code) {
    Optional<Stranger> known = with(code);
    if (known.isEmpty()) {
      return new Found.Wrong("The club has nothing with the code " + code.display() + ".");
    }
    Stranger stranger = known.get();
    if (card.partIds().contains(stranger.id())) {
      return new Found.Wrong(stranger.code() + " is on the list: it belongs to this bow.");
    }
    return stranger.place().isEmpty()
        ? new Found.Wrong(stranger.asKit())
        : new Found.OnIt(stranger);
  }

  /**
   * Reads the code that is on a bow and what is to be done about it; empty where none was typed or
   * something is wrong or not answered, which then stands at its field.
   */
  public Optional<StrangerBack> read(Typed typed, StrangerBack.Fields fields, RigCard card) {
    ItemCode code = typed.code(fields.code());
    StrangerAnswer answer = typed.word(fields.answer(), StrangerAnswer.class);
    if (code == null) {
      return Optional.empty();
    }
    Found known = on(card, code);
    if (known instanceof Found.OnIt found) {
      if (answer == null && typed.messageAt(fields.answer()) == null) {
        typed.fault(fields.answer(), found.stranger().question(card));
      }
      return Optional.ofNullable(answer)
          .map(said -> new StrangerBack(card, found.stranger(), said));
    }
    typed.fault(fields.code(), ((Found.Wrong) known).message());
    return Optional.empty();
  }

  /** The fields as a form shows them, with what was typed into them. */
  public StrangerAsked asked(Typed typed, StrangerBack.Fields fields, RigCard card) {
    Typed once = Typed.nothing().with("code", typed.value(fields.code()));
    ItemCode code = once.code("code");
    Stranger stranger =
        code != null && on(card, code) instanceof Found.OnIt found ? found.stranger() : null;
    return StrangerAsked.of(fields, card, stranger, typed);
  }

  Optional<Stranger> with(ItemCode code) {
    return rows.one(
        Stranger.class,
        """
        SELECT i.id, i.code AS bare_code, i.kind,
               EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id AND w.released_at IS NULL) AS withdrawn,
               i.retired_why, f.rig_id, b.code AS rig_code, k.rig_id AS kept_with,
               (SELECT coalesce(p.name, l.leader)
                  FROM loan_line x JOIN loan l ON l.id = x.loan_id
                  LEFT JOIN borrower p ON p.id = l.borrower_id
                 WHERE x.item_id = i.id AND x.back_at IS NULL LIMIT 1) AS holder
          FROM item i
          LEFT JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
          LEFT JOIN fitting fb ON fb.rig_id = f.rig_id AND fb.place = 'BODY' AND fb.until_at IS NULL
          LEFT JOIN item b ON b.id = coalesce(fb.item_id, i.id)
          LEFT JOIN kept_with k ON k.item_id = i.id
         WHERE i.code = ?1\
        """,
        code.bare());
  }

  /** The rig that this part is fitted to. */
  Optional<RigId> rigOf(ItemCode code) {
    return rows.one(
            OfRig.class,
            """
            SELECT f.rig_id FROM item i JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
             WHERE i.code = ?1\
            """,
            code.bare())
        .map(OfRig::rig);
  }

  private record OfRig(RigId rig) {}
}
