package club.ascham.assembly;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.time.ClubTime;
import jakarta.inject.Singleton;
import java.util.Map;

/** Puts rigs together by what their form asks. */
@Singleton
public class AssemblyDoor {
  private final AssembleRig assembleRig;
  private final ClubTime time;

  AssemblyDoor(AssembleRig assembleRig, ClubTime time) {
    this.assembleRig = assembleRig;
    this.time = time;
  }

  public Outcome<RigId> assemble(Map<String, String> form) {
    return assembleRig.assemble(Assembly.parse(Typed.of(form), time.today()));
  }
}
