package club.ascham.register;

import club.ascham.form.Words;
import io.quarkus.qute.TemplateData;

/** The kinds of thing a club owns, with the letter that their codes begin with. */
@TemplateData
public enum ItemKind {
  RISER('R', "risers", "riser", "risers"),
  LIMBS('L', "limbs", "pair of limbs", "limbs"),
  BOW('B', "bows", "one-piece bow", "one-piece bows"),
  STRING('S', "strings", "string", "strings"),
  STRINGER('T', "stringers", "stringer", "stringers"),
  ARROWS('A', "kit-items", "set of arrows", "arrows"),
  TAB('K', "kit-items", "tab", "tabs"),
  BRACER('K', "kit-items", "bracer", "bracers"),
  CHESTGUARD('K', "kit-items", "chestguard", "chestguards"),
  QUIVER('K', "kit-items", "quiver", "quivers"),
  CASE('K', "kit-items", "case", "cases"),
  REST('K', "kit-items", "arrow rest", "arrow rests"),
  SIGHT('K', "kit-items", "sight", "sights"),
  BUTTON('K', "kit-items", "button", "buttons"),
  STABILISER('K', "kit-items", "stabiliser", "stabilisers"),
  CLICKER('K', "kit-items", "clicker", "clickers");

  private final char letter;
  private final String slug;
  private final String said;
  private final String plural;

  ItemKind(char letter, String slug, String said, String plural) {
    this.letter = letter;
    this.slug = slug;
    this.said = said;
    this.plural = plural;
  }

  /** The first character of its codes. */
  public char letter() {
    return letter;
  }

  /** Its list's name in the API and as a file: {@code kit-items}. */
  public String slug() {
    return slug;
  }

  /** One of them, as people say it. */
  public String said() {
    return said;
  }

  /** As a line of a list begins: {@code Arrow rest}. */
  public String capital() {
    return Character.toUpperCase(said.charAt(0)) + said.substring(1);
  }

  public String article() {
    return said.startsWith("a") ? "an" : "a";
  }

  /** Several of them, as people say it. */
  public String plural() {
    return plural;
  }

  /** Its word in addresses, JSON and CSV: {@code riser}. */
  public String word() {
    return Words.of(this);
  }

  /** The name of its small drawing. */
  public String mark() {
    return this == BOW ? "one-piece" : word();
  }

  /** Whether it is one of the smaller things that go out beside a bow. */
  public boolean isKitItem() {
    return slug.equals("kit-items");
  }

  /** Whether it is fitted to a rig. */
  public boolean isRigPart() {
    return this == RISER || this == LIMBS || this == BOW || this == STRING;
  }
}
