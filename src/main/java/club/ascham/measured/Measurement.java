package club.ascham.measured;

import club.ascham.bow.BracePoint;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import club.ascham.verdict.Reading;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What is measured, counted or turned of a bow at a set-up, a check and an adjustment, each told
 * once: forms and calls read it by its {@link #field()}, a list of files and a table have it as its
 * {@link #column()}, the record and the description of the API say it as it stands here.
 *
 * <p>Whoever measures now is asked back outside {@link #asked()}. What the database holds, and an
 * import of history may bring, is {@link #kept()}: the same but for the two tiller distances, since
 * an odd bow of years ago was measured as it was, and is judged all the same.
 */
public enum Measurement {
  BRACE(
      Plausible.BRACE,
      Plausible.BRACE,
      "Brace height: from the string, square, to the point that braceFrom names."),
  TILLER_UPPER(
      Plausible.TILLER_DISTANCE,
      Plausible.TILLER_DISTANCE_IN_HISTORY,
      "Upper tiller distance: from the string, square, to the base of the upper limb."),
  TILLER_LOWER(
      Plausible.TILLER_DISTANCE,
      Plausible.TILLER_DISTANCE_IN_HISTORY,
      "Lower tiller distance: from the string, square, to the base of the lower limb."),
  NOCKING(
      Plausible.NOCKING,
      Plausible.NOCKING,
      "Nocking point: its height above square; below is negative."),
  TURNS_UPPER(0, 12, false, "Turns that the upper limb bolt stands out."),
  TURNS_LOWER(0, 12, false, "Turns that the lower limb bolt stands out."),
  TWISTS(0, 150, true, "Twists in the string."),
  TWISTS_ADDED(-100, 100, true, "Twists put in; taken out is negative."),
  UPPER_IN(-4, 4, false, "Turns of the upper limb bolt, in is positive."),
  LOWER_IN(-4, 4, false, "Turns of the lower limb bolt, in is positive.");

  /** Of a strung bow, with the point that brace is measured from. */
  public static final List<Measurement> READING = List.of(BRACE, TILLER_UPPER, TILLER_LOWER);

  /** Names the point that brace is measured from. */
  public static final String FROM = "braceFrom";

  private static final Pattern NEXT_WORD = Pattern.compile("_(.)");
  private static final int LONGEST_TYPED = 40;

  private final Plausible asked;
  private final Plausible kept;
  private final int low;
  private final int high;
  private final boolean whole;
  private final String description;

  Measurement(Plausible asked, Plausible kept, String description) {
    this.asked = asked;
    this.kept = kept;
    this.low = 0;
    this.high = 0;
    this.whole = false;
    this.description = description;
  }

  Measurement(int low, int high, boolean whole, String description) {
    this.asked = null;
    this.kept = null;
    this.low = low;
    this.high = high;
    this.whole = whole;
    this.description = description;
  }

  /** Its name in forms, JSON and files: {@code tillerUpper}. */
  public String field() {
    return camel(column());
  }

  /** Its name in every table that has it: {@code tiller_upper}. */
  public String column() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Where the text of a length stands that it was read from: {@code upper_typed}. */
  public String typedColumn() {
    return column().substring(column().lastIndexOf('_') + 1) + "_typed";
  }

  public String typedField() {
    return camel(typedColumn());
  }

  private static String camel(String column) {
    return NEXT_WORD.matcher(column).replaceAll(next -> next.group(1).toUpperCase(Locale.ROOT));
  }

  public boolean isLength() {
    return asked != null;
  }

  /** What a person who measures may type of a length. */
  public Plausible asked() {
    return asked;
  }

  /** What the database holds of a length. */
  public Plausible kept() {
    return kept;
  }

  /** The least of what is counted, both for who counts and for the database. */
  public int low() {
    return low;
  }

  public int high() {
    return high;
  }

  /** Whether it is counted in whole ones. */
  public boolean isWhole() {
    return whole;
  }

  /** What it is and what may be sent of it, for whoever writes a program. */
  public String described() {
    return isLength()
        ? description + " A length " + asked.range() + "."
        : "%s From %d to %d%s.".formatted(description, low, high, whole ? ", in whole ones" : "");
  }

  /** Null where nothing was typed, or a fault stands at its field. */
  public Length length(Typed typed, LengthUnit unit) {
    return typed.length(field(), unit, asked);
  }

  /** The same of what is counted or turned. */
  public Double number(Typed typed) {
    return typed.decimal(field(), low, high);
  }

  /** The same of what is counted in whole ones. */
  public Integer count(Typed typed) {
    return typed.whole(field(), low, high);
  }

  /**
   * The readings of a strung bow, each that was typed.
   *
   * @param whence asks for the point that brace was measured from, where it is not said
   */
  public static Reading reading(Typed typed, LengthUnit unit, String whence) {
    BracePoint from = typed.word(FROM, BracePoint.class);
    Length brace = BRACE.length(typed, unit);
    Length upper = TILLER_UPPER.length(typed, unit);
    Length lower = TILLER_LOWER.length(typed, unit);
    fromWhere(typed, whence);
    return new Reading(brace, brace == null ? null : from, upper, lower);
  }

  /** No brace height without the point that it was measured from, wherever it comes from. */
  public static void fromWhere(Typed typed, String whence) {
    if (typed.has(BRACE.field()) && !typed.has(FROM)) {
      typed.fault(FROM, whence);
    }
  }

  /** The texts of the lengths as they were typed, which are kept beside them. */
  public static Map<Measurement, String> asTyped(Typed typed) {
    Map<Measurement, String> texts = new EnumMap<>(Measurement.class);
    for (Measurement one : values()) {
      String text = one.isLength() ? typed.optional(one.field(), LONGEST_TYPED) : null;
      if (text != null) {
        texts.put(one, text);
      }
    }
    return texts;
  }
}
