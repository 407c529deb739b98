package club.ascham.form;

/** Someone named in a form: of the club or not. */
public final class Named {
  private static final int LONGEST = 80;

  private Named() {}

  /** As typed; null where nobody is named, or no name can be read, which then stands there. */
  public static String ifAny(Typed typed, String field) {
    String name = typed.optional(field, LONGEST);
    if (name != null && name.codePoints().filter(Character::isLetter).limit(2).count() < 2) {
      typed.fault(field, "A name, please.");
      return null;
    }
    return name;
  }
}
