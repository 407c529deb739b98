package club.ascham.register;

import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import club.ascham.units.Plausible;
import java.time.LocalDate;

/** What the values of a field are, within which bounds, and how they are read from a text. */
public sealed interface Values<T> {
  Class<T> type();

  /** Null: the field is empty, or at fault. */
  T read(Fields fields, String field);

  /** A text on one line. */
  record Line(int longest) implements Values<String> {
    @Override
    public Class<String> type() {
      return String.class;
    }

    @Override
    public String read(Fields fields, String field) {
      return fields.typed().optional(field, longest);
    }
  }

  /** A text of several lines. */
  record Prose(int longest) implements Values<String> {
    @Override
    public Class<String> type() {
      return String.class;
    }

    @Override
    public String read(Fields fields, String field) {
      return fields.typed().text(field, longest);
    }
  }

  /**
   * One of some words.
   *
   * @param open what people choose to say that none of them holds; null: there is no such word
   */
  record Word<E extends Enum<E>>(Class<E> type, String open) implements Values<E> {
    @Override
    public E read(Fields fields, String field) {
      return fields.wordOr(open, field, type);
    }
  }

  /** A whole number between two bounds, both included. */
  record Whole(int low, int high) implements Values<Integer> {
    @Override
    public Class<Integer> type() {
      return Integer.class;
    }

    @Override
    public Integer read(Fields fields, String field) {
      return fields.whole(field, low, high);
    }
  }

  /** A number between two bounds, both included. */
  record Decimal(double low, double high) implements Values<Double> {
    @Override
    public Class<Double> type() {
      return Double.class;
    }

    @Override
    public Double read(Fields fields, String field) {
      return fields.decimal(field, low, high);
    }
  }

  /** The mass of an arrow in grains: read as grains unless it says grams. */
  record ArrowGrains(double low, double high) implements Values<Double> {
    @Override
    public Class<Double> type() {
      return Double.class;
    }

    @Override
    public Double read(Fields fields, String field) {
      return fields.grains(field, low, high);
    }
  }

  /**
   * A length.
   *
   * @param unit in which it is always given unless it names another; null: the person's own
   */
  record Distance(Plausible plausible, LengthUnit unit) implements Values<Length> {
    @Override
    public Class<Length> type() {
      return Length.class;
    }

    @Override
    public Length read(Fields fields, String field) {
      return fields.typed().length(field, unit == null ? fields.setting().unit() : unit, plausible);
    }
  }

  /**
   * A day that is past.
   *
   * @param inFuture what to say of one that is not
   */
  record PastDay(String inFuture) implements Values<LocalDate> {
    @Override
    public Class<LocalDate> type() {
      return LocalDate.class;
    }

    @Override
    public LocalDate read(Fields fields, String field) {
      return fields.pastDay(field, inFuture);
    }
  }

  /** An amount in the club's currency. */
  record Price() implements Values<Money> {
    @Override
    public Class<Money> type() {
      return Money.class;
    }

    @Override
    public Money read(Fields fields, String field) {
      return fields.typed().money(field, fields.setting().currency());
    }
  }

  /** A ticked box, or a plain yes or no; empty is no. */
  record YesNo() implements Values<Boolean> {
    @Override
    public Class<Boolean> type() {
      return Boolean.class;
    }

    @Override
    public Boolean read(Fields fields, String field) {
      return fields.yes(field);
    }
  }
}
