package club.ascham.exchange;

import club.ascham.form.OneLine;
import club.ascham.form.SheetText;
import club.ascham.form.Typed;
import club.ascham.form.Words;
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
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** The ways in which values are written in the files. */
final class Codecs {
  private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,15}");
  private static final Pattern SHORT_OF_DECIMALS = Pattern.compile("[0-9]+\\.[0-9]{1,2}");
  private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,9}(\\.[0-9]{1,9})?");

  private Codecs() {}

  /**
   * Free text of at most so many characters. What a spreadsheet would take for a formula gets an
   * apostrophe in front, which reading takes away again.
   */
  static Codec text(int longest) {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        String text = selected.toString();
        return SheetText.safe(text);
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        String plain =
            text.charAt(0) == '\'' && SheetText.startsFormula(text.substring(1))
                ? text.substring(1)
                : text;
        if (plain.length() > longest) {
          return fault("%d characters are too many: at most %d", plain.length(), longest);
        }
        if (!Typed.canBeShown(plain)) {
          return fault("it holds a character that can't be seen");
        }
        if (plain.isBlank()) {
          return fault("it holds nothing but spaces");
        }
        return value(plain, written(plain, around));
      }
    };
  }

  /** The same on one line, as a form has room for. */
  static Codec line(int longest) {
    Codec text = text(longest);
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return text.written(selected, around);
      }

      @Override
      public CellReading read(String cell, Surroundings around) {
        return OneLine.is(cell.strip())
            ? text.read(cell, around)
            : fault("it holds a line break; it stands on one line");
      }
    };
  }

  static Codec whole(long low, long high) {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return Long.toString(((Number) selected).longValue());
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        String number = text.strip();
        if (!WHOLE.matcher(number).matches()) {
          return fault("%s is not a whole number", quoted(text));
        }
        long value = Long.parseLong(number);
        return value < low || value > high
            ? fault("%s is outside %d to %d", number, low, high)
            : value(value, Long.toString(value));
      }
    };
  }

  /** A number with a decimal point. */
  static Codec decimal(double low, double high) {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return plain(((Number) selected).doubleValue());
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        String number = text.strip();
        if (!DECIMAL.matcher(number).matches()) {
          return fault("%s is not a number with a decimal point", quoted(text));
        }
        // Adding 0 makes of a zero with a minus the plain one that it is read back as.
        double value = Double.parseDouble(number) + 0.0;
        return value < low || value > high
            ? fault("%s is outside %s to %s", number, plain(low), plain(high))
            : value(value, plain(value));
      }
    };
  }

  private static String plain(double number) {
    BigDecimal exact = BigDecimal.valueOf(number);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  static Codec yesNo() {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return ((Number) selected).intValue() == 0 ? "no" : "yes";
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
          case "yes" -> value(1, "yes");
          case "no" -> value(0, "no");
          default -> fault("%s is neither yes nor no", quoted(text));
        };
      }
    };
  }

  static <E extends Enum<E>> Codec word(Class<E> words) {
    return word(Arrays.stream(words.getEnumConstants()).map(Enum::name).toArray(String[]::new));
  }

  /** One of some fixed words: {@code SCREW_IN} is written {@code screw-in}. */
  static Codec word(String... stored) {
    List<String> known = List.of(stored);
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return hyphened(selected.toString());
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        String word = text.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        return known.contains(word)
            ? value(word, hyphened(word))
            : fault(
                "%s is none of %s",
                quoted(text), String.join(", ", known.stream().map(Codecs::hyphened).toList()));
      }
    };
  }

  /** As {@link Words} writes a constant. */
  private static String hyphened(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A length of a kind that no page reads by its own name. */
  static Codec length(String what, double lowMm, double highMm) {
    return length(new Plausible(what, Length.ofMm(lowMm), Length.ofMm(highMm)));
  }

  /** A length with its unit: exact millimetres out, millimetres or inches in. */
  static Codec length(Plausible plausible) {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return LengthText.exact(new Length(((Number) selected).longValue()));
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        LengthParse asMm = LengthText.parse(text, LengthUnit.MILLIMETRE, plausible);
        if (asMm instanceof LengthParse.Read read) {
          // Read in another unit it is the same only if it brought its own.
          boolean unitGiven =
              LengthText.parse(text, LengthUnit.INCH, plausible) instanceof LengthParse.Read other
                  && other.length().equals(read.length());
          return unitGiven
              ? value(read.length().units(), LengthText.exact(read.length()))
              : fault("%s has no unit: write it like 222.25 mm or 8 3/4 in", quoted(text));
        }
        return new CellReading.Fault(
            asMm instanceof LengthParse.Unlikely unlikely
                ? unlikely.question()
                : ((LengthParse.Unreadable) asMm).message());
      }
    };
  }

  /** An amount in the club's currency, {@code 12.50}. */
  static Codec money() {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return new Money(((Number) selected).longValue()).plain(around.currency());
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        MoneyParse parsed = Money.parse(padded(text.strip(), around.currency()), around.currency());
        return parsed instanceof MoneyParse.Read read
            ? value(read.money().minor(), read.money().plain(around.currency()))
            : new CellReading.Fault(((MoneyParse.Unreadable) parsed).message());
      }
    };
  }

  /** Spreadsheets leave the last nought off: {@code 12.5} is {@code 12.50}. */
  private static String padded(String amount, Currency currency) {
    int decimals = amount.length() - 1 - amount.indexOf('.');
    return SHORT_OF_DECIMALS.matcher(amount).matches()
        ? amount + "0".repeat(Math.max(0, currency.getDefaultFractionDigits() - decimals))
        : amount;
  }

  /** The code of the row's own item, {@code R-0147-J}. */
  static Codec code() {
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        String bare = selected.toString();
        return bare.charAt(0) + "-" + bare.substring(1, 5) + "-" + bare.substring(5);
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        CodeParse parsed = ItemCode.parse(text);
        if (parsed instanceof CodeParse.Whole whole) {
          return value(whole.item().bare(), whole.item().display());
        }
        return new CellReading.Fault(
            parsed instanceof CodeParse.WrongCheck wrong
                ? wrong.message()
                : "%s is not a code: write it like R-0147-J".formatted(quoted(text)));
      }
    };
  }

  /** Another item, by its code. */
  static Codec item() {
    return new Codec() {
      @Override
      public String selected(String column) {
        return "(SELECT code FROM item WHERE item.id = " + column + ")";
      }

      @Override
      public String written(Object selected, Surroundings around) {
        return code().written(selected, around);
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        CellReading read = code().read(text, around);
        return read instanceof CellReading.Value code
            ? new CellReading.Refers(rows -> found(rows, code))
            : read;
      }

      private static CellReading found(References rows, CellReading.Value code) {
        OptionalLong id = rows.item((String) code.stored());
        return id.isPresent()
            ? value(id.getAsLong(), code.canonical())
            : fault("no item has the code %s", code.canonical());
      }
    };
  }

  /** A row of another list, by its number. */
  static Codec number(String table, String what) {
    Codec number = whole(1, Long.MAX_VALUE);
    return new Codec() {
      @Override
      public String written(Object selected, Surroundings around) {
        return number.written(selected, around);
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        CellReading read = number.read(text, around);
        return read instanceof CellReading.Value value
            ? new CellReading.Refers(
                rows ->
                    rows.has(table, (Long) value.stored())
                        ? value
                        : fault("there is no %s %s", what, value.canonical()))
            : read;
      }
    };
  }

  /** An account, by its name. */
  static Codec account() {
    return new Codec() {
      @Override
      public String selected(String column) {
        return "(SELECT name FROM account WHERE account.id = " + column + ")";
      }

      @Override
      public String written(Object selected, Surroundings around) {
        return selected.toString();
      }

      @Override
      public CellReading read(String text, Surroundings around) {
        return new CellReading.Refers(
            rows -> {
              OptionalLong id = rows.account(text.strip());
              return id.isPresent()
                  ? value(id.getAsLong(), text.strip())
                  : fault("no account is named %s: create it first", quoted(text));
            });
      }
    };
  }

  static CellReading value(Object stored, String canonical) {
    return new CellReading.Value(stored, canonical);
  }

  static CellReading fault(String words, Object... filled) {
    return new CellReading.Fault(words.formatted(filled));
  }

  /** As much of a cell as a message has room for. */
  static String quoted(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return "“" + (line.length() > 40 ? line.substring(0, 40) + "…" : line) + "”";
  }
}
