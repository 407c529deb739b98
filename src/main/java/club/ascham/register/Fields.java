package club.ascham.register;

import club.ascham.form.Typed;
import club.ascham.units.Grains;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The fields of one item as typed, read in the ways that several kinds share. */
record Fields(Typed typed, ItemReader.Setting setting) {
  private static final Pattern WITH_UNIT =
      Pattern.compile(
          "(?<number>[0-9]+(?:[.,][0-9]+)?)\\s*(?<unit>\"|″|”|in|inch|inches|lbs?|#|g)");
  private static final Pattern MASS =
      Pattern.compile(
          "(?<number>[0-9]{1,9}(?:[.,][0-9]{1,9})?)\\s*(?:(?<grains>gr|grains?)|(?<grams>g))?");
  private static final Set<String> NO = Set.of("", "no", "false", "0", "off");

  /** A whole number whose unit people like to write behind it: {@code 25"}, {@code 1150 g}. */
  Integer whole(String field, int low, int high) {
    dropUnit(field);
    return typed.whole(field, low, high);
  }

  Double decimal(String field, double low, double high) {
    dropUnit(field);
    return typed.decimal(field, low, high);
  }

  /** In grains unless it says grams; what makes sense in grams alone is asked back. */
  Double grains(String field, double low, double high) {
    Matcher mass = MASS.matcher(typed.value(field).toLowerCase(Locale.ROOT));
    if (!mass.matches()) {
      return typed.decimal(field, low, high);
    }
    String number = mass.group("number");
    double asRead = Double.parseDouble(number.replace(',', '.'));
    double asGrams = Grains.ofGrams(asRead);
    double grains = mass.group("grams") == null ? asRead : asGrams;
    if (grains >= low && grains <= high) {
      return grains;
    }
    boolean named = mass.group("grams") != null || mass.group("grains") != null;
    if (!named && asGrams >= low && asGrams <= high) {
      typed.fault(
          field,
          "\"%s\" was read in grains. Did you mean %s g (%s)?"
              .formatted(number, number, Grains.said(asGrams)),
          number + " g");
    } else {
      typed.fault(field, "A whole arrow weighs from %.0f to %.0f gr.".formatted(low, high));
    }
    return null;
  }

  LocalDate pastDay(String field, String future) {
    LocalDate day = typed.day(field);
    if (day != null && day.isAfter(setting.today())) {
      typed.fault(field, future);
      return null;
    }
    return day;
  }

  /** A ticked box, or a plain yes or no. */
  boolean yes(String field) {
    if (typed.ticked(field)) {
      return true;
    }
    if (!NO.contains(typed.value(field).toLowerCase(Locale.ROOT))) {
      typed.fault(field, "Yes or no, please.");
    }
    return false;
  }

  /**
   * A word that may be left open; {@code open} is the word people choose to say that none of them
   * holds.
   */
  <E extends Enum<E>> E wordOr(String open, String field, Class<E> words) {
    return open != null && typed.value(field).equalsIgnoreCase(open)
        ? null
        : typed.word(field, words);
  }

  /** Says at a field that things of this kind have no such thing, if it was filled. */
  void refuse(String field, String why) {
    if (typed.has(field) && !NO.contains(typed.value(field).toLowerCase(Locale.ROOT))) {
      typed.fault(field, why);
    }
  }

  private void dropUnit(String field) {
    Matcher written = WITH_UNIT.matcher(typed.value(field).toLowerCase(Locale.ROOT));
    if (written.matches()) {
      typed.with(field, written.group("number"));
    }
  }
}
