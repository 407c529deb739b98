package club.ascham.units;

/** What became of an amount of money that a person typed. */
public sealed interface MoneyParse {

  record Read(Money money) implements MoneyParse {}

  /** No usable amount; the message says what would be accepted. */
  record Unreadable(String message) implements MoneyParse {}
}
