package club.ascham.planning;

import club.ascham.units.Money;
import java.util.Currency;
import java.util.Locale;

/** Sums as a plan says them: in whole pounds or euros, since no plan knows the pence. */
final class Amounts {
  private final Currency currency;
  private final long minorInOne;

  Amounts(Currency currency) {
    this.currency = currency;
    minorInOne = Math.round(Math.pow(10, Math.max(0, currency.getDefaultFractionDigits())));
  }

  /** {@code £1250}. */
  String whole(long minor) {
    long rounded = Math.round((double) minor / minorInOne) * minorInOne;
    return new Money(rounded).format(currency).replaceAll("[.,]0+$", "");
  }

  /** {@code +£120}, {@code −£40}, {@code no change}. */
  String change(long minor) {
    long rounded = Math.round((double) minor / minorInOne) * minorInOne;
    return rounded == 0 ? "no change" : (rounded > 0 ? "+" : "") + whole(rounded);
  }

  String exact(long minor) {
    return new Money(minor).format(currency);
  }

  /** In whole units with decimals, for the axis of a chart. */
  double units(long minor) {
    return (double) minor / minorInOne;
  }

  String code() {
    return currency.getCurrencyCode();
  }

  /** Hours a week to a hundredth: {@code 4.75}, {@code 3}. */
  static String hoursAWeek(double hours) {
    return String.format(Locale.ROOT, "%.2f", hours).replaceAll("\\.?0+$", "");
  }

  /** Minutes as hours: {@code 2.5 h}. */
  static String hours(long minutes) {
    return number(minutes / 60.0) + " h";
  }

  /** With one decimal, or none where it is whole. */
  static String number(double value) {
    double rounded = Math.round(value * 10) / 10.0;
    return rounded == Math.rint(rounded)
        ? String.valueOf((long) rounded)
        : String.format(Locale.ROOT, "%.1f", rounded);
  }
}
