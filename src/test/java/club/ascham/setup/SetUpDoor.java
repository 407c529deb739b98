package club.ascham.setup;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.rig.RigSpecs;
import club.ascham.units.LengthUnit;
import jakarta.inject.Singleton;
import java.util.Map;
import java.util.OptionalInt;

/** Sets rigs up from the first step to the last. */
@Singleton
public class SetUpDoor {
  private final SetUpWork work;
  private final RigSpecs specs;

  SetUpDoor(SetUpWork work, RigSpecs specs) {
    this.work = work;
    this.specs = specs;
  }

  public Outcome<RigId> setUp(RigId rig, Map<String, String> form) {
    work.begin(rig);
    SetUpEntry entry =
        SetUpEntry.parse(Typed.of(form), LengthUnit.MILLIMETRE, specs.known(rig).sheet());
    work.write(rig, entry, OptionalInt.empty());
    return work.finish(rig, OptionalInt.empty());
  }
}
