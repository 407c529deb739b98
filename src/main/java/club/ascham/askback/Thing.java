package club.ascham.askback;

import club.ascham.concern.Against;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
    String maker,
    String model,
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

  /** {@code limbs}, {@code 6 arrows}. */
  public String kindSaid() {
    String word = kind.equals("BOW") ? "one-piece bow" : kind.toLowerCase(Locale.ROOT);
    return arrows == null ? word : arrows + " " + word;
  }

  /** Maker and model as far as they are known; may be empty. */
  public String name() {
    return Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
  }

  /** The rig that it went out on, by the code on its body; null: it went beside one. */
  public String rigSaid() {
    if (rig == null) {
      return null;
    }
    return rigBareCode == null ? "rig " + rig.value() : new ItemCode(rigBareCode).display();
  }
}
