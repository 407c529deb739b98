package club.ascham.verdict;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a saying leaves open: which kind of value goes there, how that is written for people, and
 * how it is kept: as a whole number, a number, words, or a list of these.
 */
enum Blank {
  /** One line of words, as they are. */
  TEXT(String.class, words -> words),
  /** The same at the beginning of a sentence. */
  CAPITAL(String.class, Blank::capital),
  COUNT(Integer.class, Object::toString),
  /** {@code 1 twist}, {@code 12 twists}. */
  TWISTS(Integer.class, count -> count + (count == 1 ? " twist" : " twists")),
  /** Turns of a bolt: {@code a quarter of a turn}. */
  TURN(
      Double.class,
      turns ->
          turns == 0.125
              ? "an eighth of a turn"
              : turns == 0.25 ? "a quarter of a turn" : plain(turns) + " of a turn"),
  NUMBER(Double.class, Blank::plain),
  /** Turns in all, by quarters: nobody speaks of finer parts. */
  QUARTERS(Integer.class, Blank::quarters),
  /** {@code 8 3/4 in · 222 mm}. */
  LENGTH(Length.class, LengthText::both),
  ABOUT(Length.class, length -> "about " + LengthText.both(length.abs())),
  /** {@code fell by about 3/8 in · 9.5 mm}. */
  ROSE(Length.class, by -> (isLess(by) ? "fell by " : "rose by ") + ABOUT.said(by)),
  LARGER(Length.class, by -> ABOUT.said(by) + (isLess(by) ? " smaller" : " larger")),
  /** {@code 5/16 in · 8 mm longer}. */
  LONGER(Length.class, by -> LengthText.both(by.abs()) + (isLess(by) ? " shorter" : " longer")),
  BAND(Band.class, band -> LengthText.both(band.low()) + " to " + LengthText.both(band.high())),
  /** The same with each unit by itself: {@code 8 1/2 to 8 3/4 in · 216 to 222 mm}. */
  SPAN(Band.class, Blank::span),
  POINT(BracePoint.class, Blank::point),
  SIDE(Side.class, side -> side.name().toLowerCase(Locale.ROOT)),
  PART(BowPart.class, part -> capital(part.words())),
  QUANTITY(Quantity.class, quantity -> capital(quantity.words())),
  /** Another saying within this one. */
  SAYING(Remark.class, Remark::words);

  private static final Pattern ANY_BREAK = Pattern.compile("\\R");

  /** Beyond any bow, string or reading; the database refuses it too. */
  private static final int LONGEST_MM = 3_000;

  /** Of a limb bolt, as the register takes them. */
  private static final int MOST_TURNS_OUT = 12;

  /** Of one bolt in one adjustment, as a person may tell them. */
  private static final int MOST_TURNS_PUT_BACK = 4;

  /** What the largest tiller asks for of a bow that hardly answers. */
  private static final int MOST_TURNS_OF_BOTH = 40;

  private final Class<?> type;
  private final Function<Object, String> said;

  <T> Blank(Class<T> type, Function<T, String> said) {
    this.type = type;
    this.said = value -> said.apply(type.cast(value));
  }

  boolean takes(Object value) {
    return type.isInstance(value);
  }

  /** What is beyond anything that the program says there; empty: nothing. */
  Optional<String> beyond(Object value) {
    return switch (this) {
      case COUNT, TWISTS -> outside((Integer) value, 0, TwistLimits.MOST_AT_ALL);
      case QUARTERS -> outside((Integer) value, 0, 4 * MOST_TURNS_OF_BOTH);
      case TURN -> outside((Double) value, 0, MOST_TURNS_PUT_BACK);
      case NUMBER -> outside((Double) value, 0, MOST_TURNS_OUT);
      case LENGTH, ABOUT, ROSE, LARGER, LONGER -> tooLong((Length) value);
      case BAND, SPAN -> tooLong(((Band) value).low()).or(() -> tooLong(((Band) value).high()));
      case SAYING -> ((Remark) value).beyond();
      case TEXT, CAPITAL, POINT, SIDE, PART, QUANTITY -> Optional.empty();
    };
  }

  private static Optional<String> outside(Number value, int low, int high) {
    double number = value.doubleValue();
    return number >= low && number <= high
        ? Optional.empty()
        : Optional.of("%s is outside %d to %d".formatted(value, low, high));
  }

  private static Optional<String> tooLong(Length length) {
    return Math.abs(length.mm()) <= LONGEST_MM
        ? Optional.empty()
        : Optional.of("%d is longer than %d mm".formatted(length.units(), LONGEST_MM));
  }

  String said(Object value) {
    return said.apply(value);
  }

  /** A value as it is kept. */
  static Object kept(Object value) {
    if (value instanceof Length length) {
      return length.units();
    }
    if (value instanceof Band band) {
      return List.of(band.low().units(), band.high().units());
    }
    if (value instanceof Enum<?> word) {
      return word.name();
    }
    return value instanceof Remark remark
        ? Stream.concat(Stream.of(remark.saying().name()), remark.kept().stream()).toList()
        : value;
  }

  /**
   * The value that was kept.
   *
   * @throws IllegalArgumentException for what is no such value
   */
  Object read(Object kept) {
    if (type == String.class && kept instanceof String words) {
      return words;
    }
    if (type.isEnum() && kept instanceof String word) {
      return constant(word);
    }
    if (type == Double.class && kept instanceof Number number) {
      return number.doubleValue();
    }
    if (type == Length.class && isWhole(kept)) {
      return new Length(((Number) kept).longValue());
    }
    if (type == Integer.class && kept instanceof Integer) {
      return kept;
    }
    if (kept instanceof List<?> some) {
      if (type == Remark.class && !some.isEmpty()) {
        return Remark.read(String.valueOf(some.get(0)), some.subList(1, some.size()));
      }
      if (type == Band.class && some.size() == 2) {
        return new Band((Length) LENGTH.read(some.get(0)), (Length) LENGTH.read(some.get(1)));
      }
    }
    throw new IllegalArgumentException(kept + " is no " + name().toLowerCase(Locale.ROOT));
  }

  private static boolean isWhole(Object kept) {
    return kept instanceof Integer || kept instanceof Long;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private Object constant(String word) {
    return Enum.valueOf((Class) type, word);
  }

  private static boolean isLess(Length length) {
    return length.compareTo(Length.ZERO) < 0;
  }

  static String oneLine(String words) {
    return ANY_BREAK.splitAsStream(words).map(String::strip).collect(Collectors.joining(" "));
  }

  private static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  static String point(BracePoint point) {
    return switch (point) {
      case GRIP_THROAT -> "the throat of the grip";
      case BUTTON -> "the button";
    };
  }

  private static String span(Band band) {
    return "%s to %s · %s to %s"
        .formatted(
            LengthText.inches(band.low()).replace(" in", ""),
            LengthText.inches(band.high()),
            LengthText.wholeMm(band.low()).replace(" mm", ""),
            LengthText.wholeMm(band.high()));
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  /** {@code 3/4 of a turn}, {@code 1 1/2 turns}. */
  private static String quarters(int quarters) {
    String rest =
        switch (quarters % 4) {
          case 1 -> " 1/4";
          case 2 -> " 1/2";
          case 3 -> " 3/4";
          default -> "";
        };
    return quarters < 4
        ? rest.strip() + " of a turn"
        : quarters / 4 + rest + (quarters == 4 ? " turn" : " turns");
  }
}
