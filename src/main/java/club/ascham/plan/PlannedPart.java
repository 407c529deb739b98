package club.ascham.plan;

import java.util.List;

/**
 * A part the club owns and uses.
 *
 * @param code on its label
 * @param name maker and model, or the kind
 * @param alike what may stand in for it: parts of one word are bought and kept as spares for each
 *     other
 * @param rig the place of its rig in {@link PlannedFleet#rigs()}; negative: it is fitted to none
 * @param ageDays in service so far
 * @param loansADay what it goes through on average (likewise shots)
 * @param life null: it does not fail of itself
 */
public record PlannedPart(
    String code,
    String name,
    Kind kind,
    String alike,
    int rig,
    double ageDays,
    double loansADay,
    double shotsADay,
    Lifetime life,
    List<Routine> routines) {
  public PlannedPart {
    routines = List.copyOf(routines);
  }

  PlannedPart with(List<Routine> others) {
    return new PlannedPart(
        code, name, kind, alike, rig, ageDays, loansADay, shotsADay, life, others);
  }
}
