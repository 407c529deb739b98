package club.ascham.units;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The code on an item's label: a letter for its kind, four digits, and a check character over them,
 * shown as {@code R-0147-J}.
 *
 * <p>Two sorts of number are never issued. A check character I or O reads like 1 or 0. And MOD
 * 37,36 lets one adjacent transposition in about fifty through: where two codes differ only by such
 * a swap, neither exists, so that a swapped pair of characters never opens another item.
 *
 * @param bare the six characters without hyphens
 */
public record ItemCode(String bare) {
  private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  private static final int LAST_NUMBER = 9999;
  private static final Pattern AS_TYPED =
      Pattern.compile("(?<kind>[A-HJ-NP-Z])(?<rest>[0-9OI]{4}[0-9A-Z])(?<limb>[UL]?)");

  public ItemCode {
    if (!isIssuable(bare)) {
      throw new IllegalArgumentException("not an item code: " + bare);
    }
  }

  /** The code with this number, or empty when that number is never issued. */
  public static Optional<ItemCode> of(char kindLetter, int number) {
    if (number < 0 || number > LAST_NUMBER) {
      throw new IllegalArgumentException("an item's number has four digits, not " + number);
    }
    if (!isLetter(kindLetter)) {
      throw new IllegalArgumentException("no kind of item has the letter " + kindLetter);
    }
    String payload = "%c%04d".formatted(kindLetter, number);
    String bare = payload + checkCharacter(payload);
    return isIssuable(bare) ? Optional.of(new ItemCode(bare)) : Optional.empty();
  }

  /** The first number from {@code from} on that may be issued; empty when 9999 is passed. */
  public static OptionalInt nextIssuable(char kindLetter, int from) {
    for (int number = from; number <= LAST_NUMBER; number++) {
      if (of(kindLetter, number).isPresent()) {
        return OptionalInt.of(number);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Reads a code as typed or scanned: in either case, with or without hyphens and spaces, and with
   * O and I taken for 0 and 1 where a letter can't be.
   */
  public static CodeParse parse(String text) {
    String typed = plain(text);
    Matcher parts = AS_TYPED.matcher(typed);
    if (!parts.matches()) {
      return new CodeParse.NotACode(
          "A code is a letter, four digits and a check character, as on the label:"
              + " R-0147-J; a limb's has U or L after it.");
    }
    String bare = parts.group("kind") + parts.group("rest").replace('O', '0').replace('I', '1');
    if (!isIssuable(bare)) {
      return new CodeParse.WrongCheck(
          "%s is nobody's code: one of its characters is mistyped, or two are swapped. Read the"
                  .formatted(hyphenated(bare))
              + " label again.");
    }
    ItemCode code = new ItemCode(bare);
    return switch (parts.group("limb")) {
      case "U" -> new CodeParse.LimbOfPair(code, true);
      case "L" -> new CodeParse.LimbOfPair(code, false);
      default -> new CodeParse.Whole(code);
    };
  }

  /**
   * The check character of ISO/IEC 7064 MOD 37,36 that belongs after the payload.
   *
   * @param payload digits and upper-case letters only
   * @throws IllegalArgumentException for any other character
   */
  public static char checkCharacter(String payload) {
    return checkCharacter(payload.toCharArray(), payload.length());
  }

  private static char checkCharacter(char[] code, int payload) {
    int product = 36;
    for (int i = 0; i < payload; i++) {
      int value = ALPHABET.indexOf(code[i]);
      if (value < 0) {
        throw new IllegalArgumentException("no check character over: " + new String(code));
      }
      int sum = (product + value) % 36;
      product = (sum == 0 ? 36 : sum) * 2 % 37;
    }
    return ALPHABET.charAt((37 - product) % 36);
  }

  public char kindLetter() {
    return bare.charAt(0);
  }

  public int number() {
    return Integer.parseInt(bare.substring(1, 5));
  }

  /** As on the label: {@code R-0147-J}. */
  public String display() {
    return hyphenated(bare);
  }

  /** On characters and not by a pattern: every code of every row that a page shows comes by. */
  private static boolean isIssuable(String bare) {
    char[] code = bare.toCharArray();
    if (!isWhole(code)) {
      return false;
    }
    for (int i = 0; i + 1 < code.length; i++) {
      if (code[i] != code[i + 1]) {
        swap(code, i);
        if (isWhole(code)) {
          return false;
        }
        swap(code, i);
      }
    }
    return true;
  }

  /** Whether it has a code's shape and its check character is right. */
  private static boolean isWhole(char[] code) {
    if (code.length != 6 || !isLetter(code[0])) {
      return false;
    }
    for (int i = 1; i < 5; i++) {
      if (!isDigit(code[i])) {
        return false;
      }
    }
    return (isDigit(code[5]) || isLetter(code[5])) && checkCharacter(code, 5) == code[5];
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' && c != 'I' && c != 'O';
  }

  private static void swap(char[] code, int at) {
    char first = code[at];
    code[at] = code[at + 1];
    code[at + 1] = first;
  }

  private static String hyphenated(String bare) {
    return bare.charAt(0) + "-" + bare.substring(1, 5) + "-" + bare.charAt(5);
  }

  /** Without separators and in upper case; only ASCII letters change, so none slips in. */
  private static String plain(String text) {
    StringBuilder kept = new StringBuilder();
    for (char c : text.replaceAll("[\\s\\u00a0‐‑‒–−-]", "").toCharArray()) {
      kept.append(c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c);
    }
    return kept.toString();
  }
}
