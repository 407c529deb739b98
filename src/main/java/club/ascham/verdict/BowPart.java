package club.ascham.verdict;

/** A part of the bow that is looked at in a check. */
public enum BowPart {
  STRING("string"),
  LIMBS("limbs"),
  BOLTS("limb bolts"),
  RISER("riser"),
  REST("arrow rest");

  private final String words;

  BowPart(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
