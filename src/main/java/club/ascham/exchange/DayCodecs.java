package club.ascham.exchange;

import static club.ascham.exchange.Codecs.fault;
import static club.ascham.exchange.Codecs.quoted;
import static club.ascham.exchange.Codecs.value;

import club.ascham.form.Typed;
import club.ascham.store.Stored;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;

/** How days and moments are written in the files; a demo moves both to the day it is loaded. */
final class DayCodecs {
  private static final Instant FIRST = newYear(Typed.FIRST_YEAR);
  private static final Instant PAST_LAST = newYear(Typed.LAST_YEAR + 1);

  private DayCodecs() {}

  private static Instant newYear(int year) {
    return LocalDate.of(year, 1, 1).atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  /**
   * A day: {@code 2026-03-15} out, and in also {@code 15/3/2026} as the forms take it, since
   * spreadsheets write what they take for a date in their own way.
   */
  static Codec day() {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return selected.toString();
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        try {
          LocalDate day = dayOf(text.strip());
          if (day.getYear() < Typed.FIRST_YEAR || day.getYear() > Typed.LAST_YEAR) {
            return fault(
                "%s lies outside %d to %d", quoted(text), Typed.FIRST_YEAR, Typed.LAST_YEAR);
          }
          String stored = Stored.day(day.plusDays(around.shiftDays()));
          return value(stored, stored);
        } catch (DateTimeException | NumberFormatException unreadable) {
          return fault("%s is not a day, which is written like 2026-03-15", quoted(text));
        }
      }
    };
  }

  private static LocalDate dayOf(String text) {
    String[] parts = text.split("[/.]");
    return parts.length == 3
        ? LocalDate.of(
            Integer.parseInt(parts[2]), Integer.parseInt(parts[1]), Integer.parseInt(parts[0]))
        : LocalDate.parse(text);
  }

  /** A moment in UTC, {@code 2026-03-15T18:30:00.000Z}. */
  static Codec moment() {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return selected.toString();
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        try {
          Instant moment = Instant.parse(text.strip());
          if (moment.isBefore(FIRST) || !moment.isBefore(PAST_LAST)) {
            return fault(
                "%s lies outside %d to %d", quoted(text), Typed.FIRST_YEAR, Typed.LAST_YEAR);
          }
          String stored = Stored.moment(moment.plus(around.shiftDays(), ChronoUnit.DAYS));
          return value(stored, stored);
        } catch (DateTimeParseException unreadable) {
          return fault(
              "%s is not a moment, which is written like 2026-03-15T18:30:00Z (UTC)", quoted(text));
        }
      }
    };
  }
}
