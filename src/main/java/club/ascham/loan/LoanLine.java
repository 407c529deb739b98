package club.ascham.loan;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import java.time.Instant;
import java.util.Locale;
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
 * @param arrowLength of arrows; null: not recorded, or no arrows
 */
public record LoanLine(
    long id,
    LoanId loan,
    ItemId item,
    RigId rig,
    String bareCode,
    String kind,
    String maker,
    String model,
    Instant outAt,
    Integer arrowCount,
    Instant backAt,
    LineOutcome outcome,
    Integer backCount,
    Length arrowLength) {

  public boolean isOut() {
    return backAt == null;
  }

  /** The code as on the label. */
  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** The kind's word: {@code riser}. */
  public String kindWord() {
    return kind.toLowerCase(Locale.ROOT);
  }

  /** Maker and model as far as they are known; may be empty. */
  public String name() {
    return Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
  }

  boolean isArrows() {
    return kind.equals("ARROWS");
  }
}
