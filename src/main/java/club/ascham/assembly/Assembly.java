package club.ascham.assembly;

import club.ascham.bow.Level;
import club.ascham.bow.Style;
import club.ascham.form.Typed;
import club.ascham.rig.Place;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;

/**
 * The wish to make a rig of some parts.
 *
 * @param parts the code for each place that was answered
 * @param on the day it was done; null: now
 */
record Assembly(Map<Place, ItemCode> parts, Style style, Level level, LocalDate on) {
  static final String BODY = "body";
  static final String LIMBS = "limbs";
  static final String STRING = "string";

  /** Ask {@code typed.sound()} before using it. */
  static Assembly parse(Typed typed, LocalDate today) {
    Style style = typed.word("style", Style.class);
    Level level = typed.word("level", Level.class);
    Map<Place, ItemCode> parts = parts(typed);
    if (!typed.has(BODY)) {
      typed.fault(BODY, "Which riser, or which one-piece bow?");
    }
    if (!typed.has(STRING)) {
      typed.fault(STRING, "Which string?");
    }
    return new Assembly(
        parts,
        style == null ? Style.SPLIT_FINGER : style,
        level == null ? Level.BEGINNER : level,
        ChangeMoment.read(typed, today));
  }

  /** The codes that were typed, by place. */
  static Map<Place, ItemCode> parts(Typed typed) {
    Map<Place, ItemCode> parts = new EnumMap<>(Place.class);
    for (Place place : Place.values()) {
      ItemCode code = typed.code(field(place));
      if (code != null) {
        parts.put(place, code);
      }
    }
    return parts;
  }

  /** The name of the answer that names the part for a place. */
  static String field(Place place) {
    return switch (place) {
      case BODY -> BODY;
      case LIMBS -> LIMBS;
      case STRING -> STRING;
    };
  }
}
