package club.ascham.assembly;

import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.rig.RigSpecs;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether bows that are out suit whoever has them, asked of what no form let go: a file. */
@ApplicationScoped
public class LentBows {
  private final RigSpecs specs;
  private final LoanedParts loaned;

  LentBows(RigSpecs specs, LoanedParts loaned) {
    this.specs = specs;
    this.loaned = loaned;
  }

  /** What stands in the way of each, by the rule of the issue; those of nothing are left out. */
  public Map<RigId, List<Obstacle>> refusals(Collection<RigId> rigs) {
    Map<RigId, List<Obstacle>> refusals = new LinkedHashMap<>();
    specs
        .of(rigs)
        .forEach(
            (rig, card) -> {
              List<Obstacle> found = loaned.refusals(card);
              if (!found.isEmpty()) {
                refusals.put(rig, found);
              }
            });
    return refusals;
  }
}
