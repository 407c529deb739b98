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
 * @param missing arrows of it that did not come back when it did; null: nobody counted
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
    Integer missing,
    Integer setOf,
    Length arrowLength,
    Double arrowMassGr) {

  /** How many arrows went out with it; null: not known, or no arrows. */
  public Integer arrows() {
    if (arrowCount != null) {
      return arrowCount;
    }
    return backCount == null || missing == null ? setOf : Integer.valueOf(backCount + missing);
  }

  /** How many of the arrows that went out did not come back; null: nobody counted, or no arrows. */
  public Integer shortBy(Integer back) {
    return arrows() == null || back == null ? null : Integer.valueOf(arrows() - back);
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

  /** What it is in a few words: {@code set of 6 arrows, 29 in, Quaysley Sprat}. */
  public String about() {
    return many()
        + (arrowLength == null ? "" : ", " + LengthText.inches(arrowLength))
        + (name().isEmpty() ? "" : ", " + name());
  }

  /** A set goes out whole, out of a pool so many do. */
  private String many() {
    if (arrows() == null) {
      return kind.said();
    }
    return (arrowCount == null ? "set of " : "") + arrows() + " " + kind.plural();
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
      case BACK -> backCount == null ? "back" : counted() + " back";
      case DAMAGED -> isShort() ? counted() + " back, damaged" : "back, damaged";
      case LOST -> "lost";
      case CHANGED -> isShort() ? "exchanged, " + counted() + " back" : "exchanged";
    };
  }

  /** Whether it came back, and damaged or fewer than went out. */
  public boolean isNotWhole() {
    return outcome == LineOutcome.DAMAGED || isShort();
  }

  private boolean isShort() {
    return missing != null && missing > 0;
  }

  private String counted() {
    return isShort() ? backCount + " of " + (backCount + missing) : backCount.toString();
  }

  public boolean isArrows() {
    return kind == ItemKind.ARROWS;
  }

  boolean isStringer() {
    return kind == ItemKind.STRINGER;
  }
}
