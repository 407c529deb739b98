package club.ascham.bench;

import club.ascham.bow.Band;
import club.ascham.mechanics.TwistLimits;
import club.ascham.rig.RigSpecs;
import club.ascham.rules.Club;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** What this club has put in force, for bows that are in no register. */
@ApplicationScoped
class ClubBands implements BenchQuestions.Bands {
  private final RigSpecs specs;
  private final Club club;

  ClubBands(RigSpecs specs, Club club) {
    this.specs = specs;
    this.club = club;
  }

  @Override
  public Optional<Band> brace(int bowIn) {
    return specs.braceInForce(bowIn);
  }

  @Override
  public TwistLimits twistLimits() {
    return club.rules().twistLimits();
  }
}
