package club.ascham.exchange;

import java.util.OptionalLong;

/** Finds the rows that cells refer to: items by code, people by name, all else by number. */
interface References {
  /** The id of the item with this code (without hyphens). */
  OptionalLong item(String bareCode);

  OptionalLong account(String name);

  /** Whether the table has a row of this number. */
  boolean has(String table, long number);
}
