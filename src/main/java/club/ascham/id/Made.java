package club.ascham.id;

import java.util.Locale;

/** The typed name of a thing that a press made or changed: what kind of thing, and which. */
public interface Made {
  long value();

  /** The word under which it is kept: {@code loan} of a {@code LoanId}. */
  default String kind() {
    String name = getClass().getSimpleName();
    return name.substring(0, name.length() - "Id".length()).toLowerCase(Locale.ROOT);
  }
}
