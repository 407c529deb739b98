package club.ascham.fleet;

import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import java.time.Instant;

/**
 * Something that went wrong with a rig: it came back unfit to issue, or a part was withdrawn.
 *
 * @param code on its body; null: none is fitted (likewise maker and model)
 * @param what in a word
 * @param check the check that found it; null: none did
 * @param said why; of a check null until its verdict is read
 */
public record Trouble(
    RigId rig,
    ItemCode code,
    String maker,
    String model,
    Instant at,
    String what,
    Long check,
    String said) {

  Trouble saying(String words) {
    return new Trouble(rig, code, maker, model, at, what, check, words);
  }

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
