package club.ascham.loan;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.register.ItemKind;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.time.Instant;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One thing that went out with a loan, and how it came back.
 *
 * @param rig the rig it was fitted to when it went out; null: it went beside one
 * @param bareCode the code without hyphens
 * @param arrowCount arrows out of a pool; null: the whole item
 * @param backAt null: still out
 * @param setOf how many arrows the set is recorded to hold; null: not counted, a pool, or no arrows
 * @param arrowLength of arrows; null: not recorded, or no arrows
 * @param arrowMassGr of the lightest arrow, in grains; null: not weighed, or no arrows
 */
public record LoanLine(
    long id,
    LoanId loan,
    ItemId item,
    RigId rig,
    String bareCode,
    ItemKind kind,
    String maker,
    String model,
    Instant outAt,
    Integer arrowCount,
    Instant backAt,
    LineOutcome outcome,
    Integer backCount,
    Integer setOf,
    Length arrowLength,
    Double arrowMassGr) {

  /** How many arrows went out with it; null: not known, or no arrows. */
  public Integer arrows() {
    return arrowCount == null ? setOf : arrowCount;
  }

  public boolean isOut() {
    return backAt == null;
  }

  /** The code as on the label. */
  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** The kind's word: {@code riser}. */
  public String kindWord() {
    return kind.word();
  }

  /** Maker and model as far as they are known; may be empty. */
  public String name() {
    return Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
  }

  /** The name of its small drawing. */
  public String mark() {
    return kind.mark();
  }

  /** Whether it is the body that its rig is known by. */
  public boolean isBody() {
    return kind == ItemKind.RISER || kind == ItemKind.BOW;
  }

  /** What it is in a few words: {@code 6 arrows, 29 in, Quaysley Sprat}. */
  public String about() {
    return (arrowCount == null ? kind.said() : arrowCount + " " + kind.plural())
        + (arrowLength == null ? "" : ", " + LengthText.inches(arrowLength))
        + (name().isEmpty() ? "" : ", " + name());
  }

  /** Where the code box leads with its code. */
  public String page() {
    return "/find?q=" + code();
  }

  /** Its field in the form that reports things lost. */
  public String lostField() {
    return "line-" + id;
  }

  /** For a list: {@code 6 arrows A-0021-7}. */
  public String label() {
    return (arrowCount == null ? "" : arrowCount + " ") + kindWord() + " " + code();
  }

  /** How it ended, as people say it; empty while it is out. */
  public String ended() {
    if (outcome == null) {
      return "";
    }
    return switch (outcome) {
      case BACK -> backCount == null ? "back" : backCount + " back";
      case DAMAGED -> "back, damaged";
      case LOST -> "lost";
      case CHANGED -> "exchanged";
    };
  }

  boolean isArrows() {
    return kind == ItemKind.ARROWS;
  }
}
