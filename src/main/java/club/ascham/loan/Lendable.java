package club.ascham.loan;

import club.ascham.bow.ArrowMass;
import club.ascham.bow.Hand;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerKind;
import club.ascham.bow.StringerSpec;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.register.ItemKind;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Something that may go out beside a bow, as it stands today.
 *
 * @param bareCode the code without hyphens
 * @param hand null: either hand
 * @param arrowMassGr of the lightest arrow, in grains; null: not weighed, or no arrows
 * @param arrowCount arrows in the set or pool; null: not counted, or no arrows
 * @param left arrows of a pool that are not out
 * @param bowFromIn with the next two, of a stringer; null: none
 * @param forBowIn with material, of a string; null: none
 * @param fittedTo the rig whose part it is; null: none
 * @param keptWith the rig it lives with without being fitted; null: none
 * @param loan the loan it is out with; null: none
 * @param lastBack when it last came back; null: it was never out
 */
public record Lendable(
    ItemId id,
    String bareCode,
    ItemKind kind,
    String maker,
    String model,
    Hand hand,
    String size,
    Length arrowLength,
    Double arrowMassGr,
    Integer arrowCount,
    boolean pool,
    int left,
    StringerKind stringerKind,
    Integer bowFromIn,
    Integer bowToIn,
    Integer forBowIn,
    StringMaterial material,
    State state,
    RigId fittedTo,
    RigId keptWith,
    Long loan,
    Instant lastBack) {

  /** The code as on the label. */
  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** The kind's word: {@code stringer}. */
  public String kindWord() {
    return kind.word();
  }

  /** Maker and model as far as they are known; may be empty. */
  public String name() {
    return Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
  }

  /** What it is in a few words: {@code 6 arrows, 28 in, Quaysley Sprat}. */
  String about() {
    return Stream.of(
            !isArrows()
                ? size
                : pool
                    ? left + " left of the pool"
                    : arrowCount == null ? null : arrowCount + " arrows",
            arrowLength == null ? null : LengthText.inches(arrowLength),
            bowFromIn == null ? null : "bows of " + bowFromIn + " to " + bowToIn + " in",
            hand == null ? null : Words.said(hand) + "-handed",
            name().isEmpty() ? null : name())
        .filter(part -> part != null && !part.isBlank())
        .collect(Collectors.joining(", "));
  }

  /** For a sentence: {@code The tab K-0021-7}. */
  String said() {
    return "The " + (kind == ItemKind.LIMBS ? "pair of limbs" : kindWord()) + " " + code();
  }

  public boolean isArrows() {
    return kind == ItemKind.ARROWS;
  }

  /** Against the weight on an archer's fingers; empty for what is no arrow or was not weighed. */
  public Optional<ArrowMass> against(WeightOnFingers weight) {
    return arrowMassGr == null || weight == null
        ? Optional.empty()
        : Optional.of(new ArrowMass(arrowMassGr, weight));
  }

  /** Whether it only ever goes out as part of a rig. */
  boolean isBowPart() {
    return kind.isRigPart() && kind != ItemKind.STRING;
  }

  /** Null for anything but a stringer. */
  public StringerSpec stringer() {
    return bowFromIn == null ? null : new StringerSpec(stringerKind, bowFromIn, bowToIn);
  }

  /** As far as it decides about fitting a bow; null for anything but a string. */
  StringSpec string() {
    return forBowIn == null ? null : new StringSpec(forBowIn, null, material, null, null, null);
  }
}
