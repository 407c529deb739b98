package club.ascham.upkeep;

import club.ascham.bow.Who;
import club.ascham.form.Words;
import java.util.Arrays;
import java.util.List;

/** A kind of work that keeps an item safe to use. */
public enum Work {
  STRING_REPLACEMENT("string replacement", "Replace", Who.VOLUNTEER, "STRING"),
  BOLT_INSPECTION("limb-bolt inspection", "Inspect", Who.PERMIT_HOLDER, "RISER"),
  RISER_INSPECTION("riser inspection", "Inspect", Who.VOLUNTEER, "RISER"),
  LIMB_INSPECTION("limb inspection", "Inspect", Who.VOLUNTEER, "LIMBS", "BOW"),
  STRINGER_INSPECTION("stringer inspection", "Inspect", Who.VOLUNTEER, "STRINGER"),
  ARROW_INSPECTION("arrow inspection", "Inspect", Who.VOLUNTEER, "ARROWS");

  private final String said;
  private final String verb;
  private final Who signedBy;
  private final List<String> kinds;

  Work(String said, String verb, Who signedBy, String... kinds) {
    this.said = said;
    this.verb = verb;
    this.signedBy = signedBy;
    this.kinds = List.of(kinds);
  }

  /** As people say it: {@code limb-bolt inspection}. */
  public String said() {
    return said;
  }

  /** As a heading: {@code Limb-bolt inspection}. */
  public String capital() {
    return Character.toUpperCase(said.charAt(0)) + said.substring(1);
  }

  /** The word on the button that starts it. */
  public String verb() {
    return verb;
  }

  /** Its word in addresses, JSON and CSV: {@code bolt-inspection}. */
  public String word() {
    return Words.of(this);
  }

  /** Who may sign that it was done. */
  public Who signedBy() {
    return signedBy;
  }

  /** The kinds of item that it is done to. */
  public List<String> kinds() {
    return kinds;
  }

  /** All that is done to items of this kind. */
  public static List<Work> allFor(String kind) {
    return Arrays.stream(values()).filter(work -> work.isFor(kind)).toList();
  }

  public boolean isFor(String kind) {
    return kinds.contains(kind);
  }

  public boolean isInspection() {
    return this != STRING_REPLACEMENT;
  }
}
