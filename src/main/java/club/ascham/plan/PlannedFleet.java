package club.ascham.plan;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The fleet as it is on one day.
 *
 * @param rigs by name, in a fixed order
 * @param parts in use: fitted, or unfitted and inspected all the same
 * @param spares unused parts by what they may stand in for ({@link PlannedPart#alike()})
 * @param terms for every kind
 */
public record PlannedFleet(
    LocalDate today,
    List<Rig> rigs,
    List<PlannedPart> parts,
    Map<String, Integer> spares,
    Map<Kind, Terms> terms) {
  public PlannedFleet {
    rigs = List.copyOf(rigs);
    parts = List.copyOf(parts);
    spares = Map.copyOf(spares);
    terms = Map.copyOf(new EnumMap<>(terms));
    for (Kind kind : Kind.values()) {
      if (!terms.containsKey(kind)) {
        throw new IllegalArgumentException("no terms for " + kind);
      }
    }
  }

  /**
   * A rig.
   *
   * @param outForDays how long it is thought to stay out of use from today; 0: it is in use
   */
  public record Rig(String name, int outForDays) {}
}
