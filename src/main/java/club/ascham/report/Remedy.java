package club.ascham.report;

import club.ascham.upkeep.Work;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** The work that tells whether a part is sound after what was told of it. */
final class Remedy {
  private Remedy() {}

  /**
   * The first is the chief one; empty: nothing is inspected by a list on such a thing, so that a
   * person's answer is all there is.
   *
   * @param kind of the item
   */
  static List<Work> of(String kind, Collection<Noticed> signs) {
    boolean bolts = signs.contains(Noticed.BOLT_LOOSE);
    boolean more = signs.stream().anyMatch(s -> s.isDangerous() && s != Noticed.BOLT_LOOSE);
    return switch (kind) {
      case "RISER" ->
          Stream.of(
                  bolts ? Work.BOLT_INSPECTION : null,
                  more || !bolts ? Work.RISER_INSPECTION : null)
              .filter(work -> work != null)
              .toList();
      case "LIMBS", "BOW" -> List.of(Work.LIMB_INSPECTION);
      case "STRING" -> List.of(Work.STRING_REPLACEMENT);
      case "STRINGER" -> List.of(Work.STRINGER_INSPECTION);
      case "ARROWS" -> List.of(Work.ARROW_INSPECTION);
      default -> List.of();
    };
  }
}
