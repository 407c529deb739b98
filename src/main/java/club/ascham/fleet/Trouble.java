package club.ascham.fleet;

import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import java.time.Instant;

/**
 * Something that went wrong with a rig: it came back unfit to issue, or a part was withdrawn.
 *
 * @param code on its body; null: none is fitted (likewise maker and model)
 * @param what in a word
 */
public record Trouble(
    RigId rig, ItemCode code, String maker, String model, Instant at, String what, String said) {

  public String title() {
    return code == null ? "rig " + rig.value() : code.display();
  }

  public String name() {
    return Naming.of(maker, model, null);
  }

  public String href() {
    return "/rigs/" + rig.value();
  }
}
