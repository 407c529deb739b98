package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.learnt.BowRecords;
import club.ascham.learnt.Learnt;
import club.ascham.learnt.LearntWords;
import club.ascham.learnt.SecondMeasurement;
import club.ascham.rules.Club;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** What an assembled rig's own adjustments have shown. */
@ApplicationScoped
public class OwnRecords {
  private final BowRecords records;
  private final Club club;

  OwnRecords(BowRecords records, Club club) {
    this.records = records;
    this.club = club;
  }

  /**
   * @param second a measurement after an adjustment that is not kept yet; null: none
   */
  public Learnt of(RigCard card, SecondMeasurement second) {
    return records.of(card.id(), id(card.body()), id(card.limbs()), id(card.string()), second);
  }

  private static ItemId id(Part part) {
    return part == null ? null : part.id();
  }

  /** In lines for the rig's page; none while it is not whole. */
  public List<String> words(RigCard card) {
    return card.isWhole()
        ? LearntWords.of(of(card, null), card.spec().orElseThrow(), club.rules().twistLimits())
        : List.of();
  }
}
