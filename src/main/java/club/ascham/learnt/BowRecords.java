package club.ascham.learnt;

import club.ascham.bow.BowLength;
import club.ascham.bow.OnePieceSpec;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.learnt.History.Bow;
import club.ascham.learnt.History.Fitting;
import club.ascham.learnt.History.Measured;
import club.ascham.learnt.History.Place;
import club.ascham.learnt.History.SetUp;
import club.ascham.learnt.History.Work;
import club.ascham.register.PartSpecs;
import club.ascham.register.Parts;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads what was done to a bow and its parts: two statements where nothing was, six at most. */
@ApplicationScoped
public class BowRecords {
  private static final String RIGS_OF_PARTS =
      "(SELECT rig_id FROM fitting WHERE item_id IN (?1, ?2, ?3))";

  private final Rows rows;
  private final PartSpecs specs;

  BowRecords(Rows rows, PartSpecs specs) {
    this.rows = rows;
    this.specs = specs;
  }

  /**
   * What the record says of this rig as it is now.
   *
   * @param body null: none fitted (likewise limbs and string)
   * @param second a second measurement that is not kept yet; null: none
   */
  public Learnt of(RigId rig, ItemId body, ItemId limbs, ItemId string, SecondMeasurement second) {
    History.Parts now = new History.Parts(body, limbs, string);
    Object[] parts = {body, limbs, string};
    List<Work> work =
        rows.list(
            Work.class,
            """
            SELECT a.id, a.rig_id, a.happened_at AS at, a.check_id AS before, a.after_id, a.twists_added, a.upper_in,
                   a.lower_in,
                   EXISTS (SELECT 1 FROM verdict_line v WHERE v.check_id = a.check_id AND v.step = 'TWISTS') AS twists_asked,
                   EXISTS (SELECT 1 FROM verdict_line v
                            WHERE v.check_id = a.check_id AND v.step IN ('UPPER_BOLT', 'LOWER_BOLT')) AS bolts_asked
              FROM adjustment a
             WHERE a.rig_id IN %s ORDER BY a.happened_at, a.id"""
                .formatted(RIGS_OF_PARTS),
            parts);
    List<SetUp> setUps =
        rows.list(
            SetUp.class,
            """
            SELECT u.rig_id, u.finished_at,
                   (SELECT f.item_id FROM fitting f
                     WHERE f.rig_id = u.rig_id AND f.place = 'STRING' AND f.from_at <= u.finished_at
                       AND (f.until_at IS NULL OR f.until_at > u.finished_at)) AS string,
                   coalesce(u.twists, (SELECT twists FROM bowstring WHERE id = ?3)) AS twists,
                   u.turns_upper, u.turns_lower
              FROM set_up u
             WHERE u.finished_at IS NOT NULL AND u.rig_id IN """
                + RIGS_OF_PARTS,
            parts);
    History history = work.isEmpty() ? History.untouched(setUps) : worked(work, setUps, parts);
    return Carried.of(second == null ? history : history.with(second), rig, now);
  }

  private History worked(List<Work> work, List<SetUp> setUps, Object... parts) {
    List<Fitting> fittings =
        rows.list(
            Fitting.class,
            "SELECT rig_id, item_id, place, from_at AS \"from\", until_at AS until FROM fitting WHERE rig_id IN "
                + RIGS_OF_PARTS,
            parts);
    return new History(work, measured(parts), fittings, setUps, lengths(fittings));
  }

  private List<Measured> measured(Object... parts) {
    return rows.list(
        Measured.class,
        """
        SELECT c.id, c.corrects_id, c.happened_at AS at, c.brace, c.brace_from AS reading_from, c.tiller_upper,
               c.tiller_lower
          FROM bow_check c
         WHERE c.rig_id IN %1$s
           AND (c.corrects_id IS NOT NULL
                OR c.id IN (SELECT check_id FROM adjustment WHERE rig_id IN %1$s)
                OR c.id IN (SELECT after_id FROM adjustment WHERE rig_id IN %1$s))
         ORDER BY c.id"""
            .formatted(RIGS_OF_PARTS),
        parts);
  }

  private Map<Bow, Integer> lengths(List<Fitting> fittings) {
    Parts known = specs.of(fittings.stream().map(Fitting::item).toList());
    Map<Bow, Integer> lengths = new HashMap<>();
    List<Fitting> bodies = fittings.stream().filter(one -> one.place() == Place.BODY).toList();
    List<Fitting> limbs = fittings.stream().filter(one -> one.place() == Place.LIMBS).toList();
    for (Fitting body : bodies) {
      Optional.ofNullable(known.bows().get(body.item()))
          .map(OnePieceSpec::bowLengthIn)
          .ifPresent(length -> lengths.put(new Bow(body.item(), null), length));
      for (Fitting pair : limbs) {
        if (pair.rig().equals(body.rig()) && known.risers().containsKey(body.item())) {
          OptionalInt length =
              BowLength.of(known.risers().get(body.item()), known.limbs().get(pair.item()));
          length.ifPresent(in -> lengths.put(new Bow(body.item(), pair.item()), in));
        }
      }
    }
    return lengths;
  }
}
