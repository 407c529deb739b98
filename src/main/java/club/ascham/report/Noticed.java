package club.ascham.report;

import club.ascham.form.Words;
import club.ascham.verdict.BowPart;
import java.util.Optional;

/**
 * What someone may have noticed of a bow, in plain words: no training needed to tick one. Which of
 * them are dangerous is judged by common practice, on the careful side.
 */
public enum Noticed {
  CRACK(
      "a crack, or a line that may be one",
      "a limb may break when it is drawn",
      true,
      BowPart.LIMBS),
  BANG("a bang or a crack was heard", "a limb or the riser may have given", true, null),
  CREAK("it creaks or clicks", "layers may be parting, or a limb is loose", true, null),
  FELL("it fell, or was knocked hard", "a crack may not show yet", true, null),
  LOOSED_WITHOUT_ARROW(
      "it was loosed without an arrow", "all of the force went into the limbs", true, null),
  STRAND("a strand of the string is cut or broken", "the string may break", true, BowPart.STRING),
  BOLT_LOOSE("a limb bolt, or a limb, is loose", "a limb may come off", true, BowPart.BOLTS),
  LIMB_TWISTED(
      "a limb is twisted, or the string lies off its middle",
      "the string may jump off",
      true,
      BowPart.LIMBS),
  SERVING(
      "the string is furred, or its serving is loose", "the string wears", false, BowPart.STRING),
  NOCKING_POINT("the nocking point moved or is gone", "arrows sit wrongly", false, BowPart.STRING),
  REST("the rest is loose, worn or gone", "arrows may fall off", false, BowPart.REST),
  SHOOTS_OTHERWISE(
      "it shoots, or draws, otherwise than before",
      "string, bolts or limbs may have changed",
      false,
      null),
  CAME_BACK_STRUNG("it stood strung", "limbs and string lose force", false, null),
  SOMETHING_ELSE("something else", "told in own words", false, null);

  private final String said;
  private final String mayMean;
  private final boolean dangerous;
  private final BowPart part;

  Noticed(String said, String mayMean, boolean dangerous, BowPart part) {
    this.said = said;
    this.mayMean = mayMean;
    this.dangerous = dangerous;
    this.part = part;
  }

  /** As a person says it. */
  public String said() {
    return said;
  }

  public String mayMean() {
    return mayMean;
  }

  /** Whether nobody shoots the bow before the permit holder has looked. */
  public boolean isDangerous() {
    return dangerous;
  }

  /** The part that it tells of; empty: any of them. */
  public Optional<BowPart> part() {
    return Optional.ofNullable(part);
  }

  /** Whether all of the force of a draw, or of a fall, may have gone into the bow. */
  public boolean isShock() {
    return this == LOOSED_WITHOUT_ARROW || this == FELL;
  }

  /** Its word in forms, JSON and CSV: {@code bolt-loose}. */
  public String word() {
    return Words.of(this);
  }
}
