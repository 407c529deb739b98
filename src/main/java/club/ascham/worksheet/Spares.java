package club.ascham.worksheet;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Misfit;
import club.ascham.bow.RigSpec;
import club.ascham.bow.StringSpec;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.register.PartSpecs;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the strings that could take the place of a rig's. */
@ApplicationScoped
class Spares {
  private final Rows rows;
  private final RigSpecs rigs;
  private final PartSpecs parts;
  private final ClubTime time;

  Spares(Rows rows, RigSpecs rigs, PartSpecs parts, ClubTime time) {
    this.rows = rows;
    this.rigs = rigs;
    this.parts = parts;
    this.time = time;
  }

  /**
   * The ready strings for a rig.
   *
   * @param fitting those that fit it, the ones kept with it first
   * @param others how many are ready but do not fit
   * @param bowLengthIn what a string for it must be labelled; null: not known
   * @param rig what it goes on; null: not known
   */
  record Choice(List<Spare> fitting, int others, Integer bowLengthIn, RigCard rig) {
    Optional<Spare> coded(String bareCode) {
      return fitting.stream().filter(spare -> spare.bareCode().equals(bareCode)).findFirst();
    }
  }

  Choice forRig(RigId rig) {
    List<Spare> ready =
        rows.list(
            Spare.class,
            """
            SELECT i.id, i.code AS bare_code, i.maker, i.model, b.for_bow_in, b.material, b.strands,
                   coalesce(k.rig_id = ?2, 0) AS kept_here
              FROM item_standing s
              JOIN item i ON i.id = s.item_id
              JOIN bowstring b ON b.id = i.id
              LEFT JOIN kept_with k ON k.item_id = i.id
             WHERE s.kind = 'STRING' AND s.rig_id IS NULL AND %s = 'READY'
             ORDER BY coalesce(k.rig_id = ?2, 0) DESC, k.rig_id IS NOT NULL, i.bought_on, i.code"""
                .formatted(Standing.STATE_TODAY),
            time.today(),
            rig);
    Optional<RigCard> card = rigs.of(rig);
    Optional<RigSpec> bow = card.flatMap(RigCard::spec);
    if (bow.isEmpty()) {
      return new Choice(List.of(), ready.size(), null, card.orElse(null));
    }
    Map<ItemId, StringSpec> specs = parts.of(ready.stream().map(Spare::id).toList()).strings();
    List<Spare> fitting = new ArrayList<>(ready);
    fitting.removeIf(spare -> !misfits(bow.get(), specs.get(spare.id())).isEmpty());
    var length = bow.get().bowLengthIn();
    return new Choice(
        List.copyOf(fitting),
        ready.size() - fitting.size(),
        length.isPresent() ? length.getAsInt() : null,
        card.get());
  }

  private static List<Misfit> misfits(RigSpec bow, StringSpec string) {
    return Compatibility.misfits(
        new RigSpec(bow.riser(), bow.limbs(), bow.onePiece(), string, bow.style()));
  }
}
