package club.ascham.check;

import club.ascham.bow.Gauge;
import club.ascham.bow.Target;
import club.ascham.measured.Measurement;
import club.ascham.rig.RigCard;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import java.util.ArrayList;
import java.util.List;

/** The readings of one bow against its bands and set-up figures. */
final class BowGauges {
  private BowGauges() {}

  static Gauge brace(RigCard card, Length reading) {
    return Gauge.of("Brace", card.targets().brace(), card.setUp().brace(), reading, false);
  }

  /**
   * @param scatter how far two readings may lie apart: a tiller that nothing sets is outside beyond
   *     it
   */
  static Gauge tiller(RigCard card, Length scatter, Length reading) {
    Target target =
        card.targets().withFixedTiller(card.spec().orElseThrow(), card.setUp(), scatter).tiller();
    return Gauge.of("Tiller", target, card.setUp().tiller(), reading, true);
  }

  /** The gauge of what was typed last; none while it can't be read or compared. */
  static List<Gauge> typed(RigCard card, Length scatter, Measurement last, Reading so) {
    boolean otherPoint = so.from() != null && so.from() != card.setUp().braceFrom();
    return switch (last) {
      case BRACE -> so.brace() == null || otherPoint ? List.of() : List.of(brace(card, so.brace()));
      case TILLER_UPPER -> distance("Upper", card.setUp().tillerUpper(), so.tillerUpper());
      default ->
          so.tiller() == null
              ? distance("Lower", card.setUp().tillerLower(), so.tillerLower())
              : List.of(tiller(card, scatter, so.tiller()));
    };
  }

  private static List<Gauge> distance(String what, Length setUp, Length reading) {
    return reading == null
        ? List.of()
        : List.of(Gauge.of(what, new Target(null, null, ""), setUp, reading, false));
  }

  /** Brace only where it was measured from the set-up's own point. */
  static List<Gauge> of(RigCard card, Length scatter, Reading reading) {
    List<Gauge> gauges = new ArrayList<>();
    if (reading.from() == card.setUp().braceFrom()) {
      gauges.add(brace(card, reading.brace()));
    }
    gauges.add(tiller(card, scatter, reading.tiller()));
    return gauges;
  }
}
