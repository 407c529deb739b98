package club.ascham.accident;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A thing that was in somebody's hands.
 *
 * @param rig that it was fitted to; null: it went beside one
 * @param arrows out of a pool; null: the whole item
 * @param retired whether it is off the register now
 */
@TemplateData
public record Held(
    ItemId item,
    String bareCode,
    String kind,
    String maker,
    String model,
    RigId rig,
    Integer arrows,
    boolean retired) {

  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** The name of the small drawing of its kind. */
  public String mark() {
    return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
  }

  public String kindSaid() {
    String word = kind.equals("BOW") ? "one-piece bow" : kind.toLowerCase(Locale.ROOT);
    return arrows == null ? word : arrows + " " + word;
  }

  /** Maker and model as far as they are known; may be empty. */
  public String name() {
    return Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
  }

  /**
   * Whether it can be withdrawn and kept. Arrows out of a pool are laid aside by hand: withdrawing
   * the pool would call back everyone else's. What is off the register goes nowhere any more.
   */
  public boolean isKept() {
    return arrows == null && !retired;
  }
}
