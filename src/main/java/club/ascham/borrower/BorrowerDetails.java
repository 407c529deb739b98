package club.ascham.borrower;

import club.ascham.bow.AgeBand;
import club.ascham.form.Typed;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What is kept of a borrower.
 *
 * @param contact one way to reach them: a telephone number or an e-mail address
 * @param memberNo null: none
 * @param guardian who answers for a junior; null: an adult
 */
public record BorrowerDetails(
    String name, String contact, String memberNo, AgeBand ageBand, String guardian) {
  static final int LONGEST_NAME = 120;
  public static final int LONGEST_CONTACT = 200;
  public static final String WHO_ANSWERS =
      "A junior borrows with a parent or guardian: who, please?";
  private static final int LONGEST_MEMBER_NO = 40;

  /** A number that can be dialled, or an address that can be written to. */
  private static final Pattern REACHES = Pattern.compile("\\d(?:[^\\d]{0,3}\\d){4}|\\S@\\S");

  /** Whether what was said of the same person now says nothing else than this; silence agrees. */
  boolean agreesWith(BorrowerDetails said) {
    return ageBand == said.ageBand
        && (said.memberNo == null || said.memberNo.equals(memberNo))
        && (said.guardian == null || said.guardian.equals(guardian));
  }

  /** As typed; empty when something is wrong, which then stands at its field. */
  public static Optional<BorrowerDetails> parse(Typed typed) {
    AgeBand age =
        typed.requiredWord("ageBand", AgeBand.class, "How old, as nearly as choosing a bow needs?");
    return parse(typed, age);
  }

  /** As typed, with the age already known (or null, when it is missing and said so elsewhere). */
  public static Optional<BorrowerDetails> parse(Typed typed, AgeBand age) {
    String guardian = guardian(typed, age);
    String name = name(typed, age, guardian);
    String contact = contact(typed, age, guardian);
    String memberNo = typed.optional("memberNo", LONGEST_MEMBER_NO);
    return typed.sound() && age != null
        ? Optional.of(new BorrowerDetails(name, contact, memberNo, age, guardian))
        : Optional.empty();
  }

  /** A junior's own name need not be kept: the guardian answers for them. */
  private static String name(Typed typed, AgeBand age, String guardian) {
    if (age != null && age.junior() && guardian != null && !typed.has("name")) {
      String junior = "Junior of " + guardian;
      return junior.substring(0, Math.min(LONGEST_NAME, junior.length()));
    }
    return typed.required("name", LONGEST_NAME, "A name, please.");
  }

  /** A guardian whose number is given with the name need not give it twice. */
  private static String contact(Typed typed, AgeBand age, String guardian) {
    if (age != null && age.junior() && guardian != null && !typed.has("contact")) {
      if (REACHES.matcher(guardian).find()) {
        return guardian;
      }
      typed.fault("contact", "A number or an e-mail address, here or with the guardian’s name.");
      return null;
    }
    String given =
        typed.required(
            "contact", LONGEST_CONTACT, "One way to reach them: a number or an e-mail address.");
    if (given != null && !REACHES.matcher(given).find()) {
      typed.fault("contact", "Neither a number nor an e-mail address: how are they reached?");
    }
    return given;
  }

  private static String guardian(Typed typed, AgeBand age) {
    String guardian = typed.optional("guardian", LONGEST_CONTACT);
    if (age != null && age.junior() && guardian == null) {
      typed.fault("guardian", WHO_ANSWERS);
    }
    return guardian;
  }

  /** Whether these are the same person's, as far as name and contact tell. */
  boolean samePersonAs(BorrowerDetails other) {
    return name.equalsIgnoreCase(other.name) && contact.equalsIgnoreCase(other.contact);
  }

  /** These, with what is missing here taken from what was known before. */
  public BorrowerDetails orAsIn(BorrowerDetails before) {
    return new BorrowerDetails(
        name, contact, memberNo == null ? before.memberNo : memberNo, ageBand, guardian);
  }

  /**
   * The same person at another age.
   *
   * @param otherGuardian null: as before
   */
  public BorrowerDetails aged(AgeBand now, String otherGuardian) {
    return new BorrowerDetails(
        name, contact, memberNo, now, otherGuardian == null ? guardian : otherGuardian);
  }

  public boolean lacksGuardian() {
    return ageBand.junior() && guardian == null;
  }
}
