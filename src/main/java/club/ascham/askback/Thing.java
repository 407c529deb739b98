package club.ascham.askback;

import club.ascham.concern.Against;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import java.util.Locale;

/**
 * A thing that somebody has and that must not be shot.
 *
 * @param line of the loan
 * @param rig that it went out on; null: it went beside one (likewise rigBareCode)
 * @param arrows out of a pool; null: the whole item
 * @param against what says so, and never nothing
 */
@TemplateData
public record Thing(
    long line,
    ItemId item,
    String bareCode,
    String kind,
    RigId rig,
    String rigBareCode,
    Integer arrows,
    Against against) {

  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** The name of the small drawing of its kind. */
  public String mark() {
    return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
  }

  /** As a line begins: {@code Limbs}, {@code 6 arrows}. */
  public String kindSaid() {
    if (arrows != null) {
      return arrows + " arrows";
    }
    return kind.equals("BOW")
        ? "One-piece bow"
        : kind.charAt(0) + kind.substring(1).toLowerCase(Locale.ROOT);
  }

  /** The rig that it went out on, by the code on its body; null: it went beside one. */
  public String rigSaid() {
    if (rig == null) {
      return null;
    }
    return rigBareCode == null ? "rig " + rig.value() : new ItemCode(rigBareCode).display();
  }
}
