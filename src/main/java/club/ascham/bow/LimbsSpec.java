package club.ascham.bow;

import java.util.List;

/**
 * What decides about fitting a pair of limbs, and the weight that is marked on it.
 *
 * @param build {@link Build#ADJUSTABLE} (slot in) or {@link Build#SCREW_IN}
 * @param size for slot-in limbs; null where the maker gives a bow length instead
 * @param bowLengthIn the bow length in inches that the maker gives for them; null where a size is
 *     given
 * @param fitting the fitting standard of slot-in limbs; null for screw-in ones
 * @param model the maker's model, by which screw-in limbs match their riser
 * @param markedLb marked weight in lbf
 * @param markedAtIn AMO draw in inches that the weight was marked at, 28 unless the limb says
 *     otherwise
 * @param markedRiserIn riser length in inches that it was marked on; null: unknown
 * @param hmpeTips whether the tips are fit for HMPE strings
 * @param makerBrace the maker's own brace range; null: none known
 * @param weighed what a bow scale showed with them, on whatever riser
 */
public record LimbsSpec(
    Build build,
    LimbSize size,
    Integer bowLengthIn,
    String fitting,
    String model,
    double markedLb,
    double markedAtIn,
    Integer markedRiserIn,
    Known hmpeTips,
    Band makerBrace,
    List<ScaleReading> weighed) {

  /** Limbs that were never on a bow scale. */
  public LimbsSpec(
      Build build,
      LimbSize size,
      Integer bowLengthIn,
      String fitting,
      String model,
      double markedLb,
      double markedAtIn,
      Integer markedRiserIn,
      Known hmpeTips,
      Band makerBrace) {
    this(
        build,
        size,
        bowLengthIn,
        fitting,
        model,
        markedLb,
        markedAtIn,
        markedRiserIn,
        hmpeTips,
        makerBrace,
        List.of());
  }

  /** The same limbs, after a bow scale. */
  public LimbsSpec weighed(List<ScaleReading> readings) {
    return new LimbsSpec(
        build,
        size,
        bowLengthIn,
        fitting,
        model,
        markedLb,
        markedAtIn,
        markedRiserIn,
        hmpeTips,
        makerBrace,
        readings);
  }
}
