package club.ascham.form;

import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthParse;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import club.ascham.units.MoneyParse;
import club.ascham.units.Plausible;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The fields of one form, JSON body or CSV row as texts, read one by one into values; each fault is
 * kept at its field. Ask {@link #sound()} before using what was read: a faulty or missing field
 * reads as null (or the given default).
 *
 * <p>A field {@code take-NAME} outranks {@code NAME}: it is the button that accepts a suggestion.
 */
public final class Typed {
  /** Days of a club lie within these years: what is outside is a slip of the hand. */
  public static final int FIRST_YEAR = 1950;

  public static final int LAST_YEAR = 2100;

  private static final int LONGEST = 2000;

  private final Map<String, String> texts;
  private final Map<String, Fault> faults = new LinkedHashMap<>();

  private Typed(Map<String, String> texts) {
    this.texts = texts;
  }

  public static Typed nothing() {
    return new Typed(new LinkedHashMap<>());
  }

  public static Typed of(Map<String, String> texts) {
    Map<String, String> kept = new LinkedHashMap<>();
    texts.forEach(
        (name, text) -> {
          if (text != null && !text.isBlank()) {
            kept.put(name, text.strip());
          }
        });
    return new Typed(kept);
  }

  /**
   * The components of a JSON body as if they had been typed: a list as ticks of one name, by
   * commas. What has fields of its own, as a line of a list, is for whoever knows the body.
   *
   * @param body null: none was sent, and nothing typed
   */
  public static Typed of(Record body) {
    return body == null ? nothing() : of(BodyTexts.of(body));
  }

  /** As typed; the empty text where nothing was. For showing it again. */
  public String value(String field) {
    String taken = texts.get("take-" + field);
    return taken != null ? taken : texts.getOrDefault(field, "");
  }

  public boolean has(String field) {
    return !value(field).isEmpty();
  }

  /** A ticked box. */
  public boolean ticked(String field) {
    String text = value(field).toLowerCase(Locale.ROOT);
    return text.equals("on") || text.equals("yes") || text.equals("true") || text.equals("1");
  }

  public Typed with(String field, Object value) {
    if (value != null && !value.toString().isBlank()) {
      texts.put(field, value.toString());
    }
    return this;
  }

  public Map<String, String> all() {
    return Map.copyOf(texts);
  }

  public void fault(String field, String message) {
    faults.putIfAbsent(field, new Fault(message, null));
  }

  public void fault(String field, String message, String suggestion) {
    faults.putIfAbsent(field, new Fault(message, suggestion));
  }

  /** The fault at a field; null: none. */
  public Fault faultAt(String field) {
    return faults.get(field);
  }

  /** The message at a field; null: none. */
  public String messageAt(String field) {
    Fault fault = faults.get(field);
    return fault == null ? null : fault.message();
  }

  /** What was probably meant at a field; null: nothing to offer. */
  public String suggestionAt(String field) {
    Fault fault = faults.get(field);
    return fault == null ? null : fault.suggestion();
  }

  public boolean sound() {
    return faults.isEmpty();
  }

  public Map<String, Fault> faults() {
    return Map.copyOf(faults);
  }

  /** Faults in the order they were found, for the summary above a form. */
  public Iterable<Map.Entry<String, Fault>> faultsInOrder() {
    return faults.entrySet();
  }

  /** The line of a field that may be left empty; null where it is. */
  public String optional(String field, int longest) {
    return held(field, text(field, longest), OneLine::is, OneLine.WANTED);
  }

  /** The same of a field that has room for several lines. */
  public String text(String field, int longest) {
    String text = value(field);
    if (text.length() > Math.min(longest, LONGEST)) {
      fault(field, "At most " + longest + " characters, please; this has " + text.length() + ".");
      return null;
    }
    if (!canBeShown(text)) {
      fault(field, "It holds a character that can't be seen: type it again, please.");
      return null;
    }
    return text.isEmpty() ? null : text;
  }

  /**
   * Whether a text holds nothing but what can be seen: no control characters, no half ones, none
   * that turn the direction of writing or stand unseen between letters. The two joiners stay, since
   * scripts are written with them.
   */
  public static boolean canBeShown(String text) {
    return text.codePoints()
        .noneMatch(
            c ->
                Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t'
                    || Character.getType(c) == Character.FORMAT && c != '\u200c' && c != '\u200d'
                    || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
  }

  public String required(String field, int longest, String missing) {
    String text = optional(field, longest);
    if (text == null) {
      fault(field, missing);
    }
    return text;
  }

  /**
   * A reason, asked for with these words where the field is empty: whole words, since whoever reads
   * it later was not there. For why something was done, not for notes and names.
   */
  public String reason(String field, int longest, String missing) {
    String text = reasonIfAny(field, longest);
    if (text == null) {
      fault(field, missing);
    }
    return text;
  }

  /** A reason that need not be given; null where it is not. */
  public String reasonIfAny(String field, int longest) {
    return held(field, text(field, longest), WholeWords::isReason, WholeWords.WANTED);
  }

  /** Where a rule or a figure comes from, in whole words; "judged" is an answer. */
  public String source(String field, int longest, String missing) {
    String text = held(field, text(field, longest), WholeWords::isSource, WholeWords.WANTED);
    if (text == null) {
      fault(field, missing);
    }
    return text;
  }

  private String held(String field, String text, Predicate<String> rule, String otherwise) {
    if (text != null && !rule.test(text)) {
      fault(field, otherwise);
      return null;
    }
    return text;
  }

  /** A whole number between two bounds, both included; null where left empty. */
  public Integer whole(String field, int low, int high) {
    Double number = number(field, low, high, "whole number");
    if (number == null) {
      return null;
    }
    if (number != Math.rint(number)) {
      fault(field, "A whole number from " + low + " to " + high + ", please.");
      return null;
    }
    return number.intValue();
  }

  public Integer requiredWhole(String field, int low, int high) {
    Integer number = whole(field, low, high);
    if (number == null) {
      fault(field, "A whole number from " + low + " to " + high + ", please.");
    }
    return number;
  }

  /**
   * A number between two bounds, both included, with a decimal point or comma; null where left
   * empty.
   */
  public Double decimal(String field, double low, double high) {
    return number(field, low, high, "number");
  }

  private Double number(String field, double low, double high, String kind) {
    String text = value(field);
    if (text.isEmpty()) {
      return null;
    }
    if (text.matches("[+\\-\u2212]?\\d{1,9}([.,]\\d{1,20})?")) {
      double number = Double.parseDouble(text.replace(',', '.').replace('\u2212', '-'));
      if (number >= low && number <= high) {
        return number;
      }
    }
    fault(field, "A " + kind + " from " + plain(low) + " to " + plain(high) + ", please.");
    return null;
  }

  /** Without an exponent, as a person would write it. */
  static String plain(double number) {
    if (!Double.isFinite(number)) {
      return Double.toString(number);
    }
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? Long.toString((long) number)
        : new BigDecimal(Double.toString(number)).toPlainString();
  }

  /**
   * A day as {@code 2026-03-15} or {@code 15/3/2026} or {@code 15.3.2026}; null where left empty.
   */
  public LocalDate day(String field) {
    String text = value(field);
    if (text.isEmpty()) {
      return null;
    }
    try {
      String[] parts = text.split("[/.]");
      LocalDate day =
          parts.length == 3
              ? LocalDate.of(
                  Integer.parseInt(parts[2]),
                  Integer.parseInt(parts[1]),
                  Integer.parseInt(parts[0]))
              : LocalDate.parse(text);
      if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
        return day;
      }
      fault(field, "A day from " + FIRST_YEAR + " to " + LAST_YEAR + ", please.");
    } catch (DateTimeParseException | NumberFormatException unreadable) {
      fault(field, "A day such as 2026-03-15 or 15/3/2026, please.");
    } catch (DateTimeException impossible) {
      fault(field, "There is no such day.");
    }
    return null;
  }

  /**
   * One of an enum's constants, in lower case with hyphens ({@code screw-in}); null where left
   * empty.
   */
  public <E extends Enum<E>> E word(String field, Class<E> words) {
    String text = value(field);
    if (text.isEmpty()) {
      return null;
    }
    String name = text.toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    for (E word : words.getEnumConstants()) {
      if (word.name().equals(name)) {
        return word;
      }
    }
    fault(field, "One of these, please: " + words(words) + ".");
    return null;
  }

  public <E extends Enum<E>> E requiredWord(String field, Class<E> words, String missing) {
    E word = word(field, words);
    if (word == null) {
      fault(field, missing);
    }
    return word;
  }

  /**
   * A length, read in the unit beside the field ({@code NAME-unit}) or else in the given one,
   * unless it names its own; a likely slip of unit is asked back. Null where left empty.
   */
  public Length length(String field, LengthUnit otherwise, Plausible plausible) {
    String text = value(field);
    if (text.isEmpty()) {
      return null;
    }
    LengthUnit assumed = LengthUnit.spelled(value(field + "-unit")).orElse(otherwise);
    LengthParse parse = LengthText.parse(text, assumed, plausible);
    if (parse instanceof LengthParse.Read read) {
      return read.length();
    }
    if (parse instanceof LengthParse.Unlikely unlikely) {
      fault(field, unlikely.question(), unlikely.likelyText());
    } else if (parse instanceof LengthParse.Unreadable unreadable) {
      fault(field, unreadable.message());
    }
    return null;
  }

  /** The code of an item, typed or scanned; a single limb's code reads as its pair's. */
  public ItemCode code(String field) {
    String text = value(field);
    if (text.isEmpty()) {
      return null;
    }
    CodeParse parse = ItemCode.parse(text);
    if (parse instanceof CodeParse.OfItem found) {
      return found.item();
    }
    fault(field, ((CodeParse.OfNone) parse).message());
    return null;
  }

  /** An amount of the club's money; null where left empty. */
  public Money money(String field, Currency currency) {
    String text = value(field);
    if (text.isEmpty()) {
      return null;
    }
    MoneyParse parse = Money.parse(text, currency);
    if (parse instanceof MoneyParse.Read read) {
      return read.money();
    }
    fault(field, ((MoneyParse.Unreadable) parse).message());
    return null;
  }

  /** The version of a thing that a form was made from, to find out whether someone saved first. */
  public OptionalInt version() {
    Integer version = whole("version", 0, Integer.MAX_VALUE);
    return version == null ? OptionalInt.empty() : OptionalInt.of(version);
  }

  private static <E extends Enum<E>> String words(Class<E> words) {
    return Arrays.stream(words.getEnumConstants()).map(Words::of).collect(Collectors.joining(", "));
  }
}
