package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.units.ItemCode;
import java.time.LocalDate;

/**
 * An item as the register holds it.
 *
 * @param version counts its changes, so that a stale form is told from a fresh one
 * @param retirement null: still the club's
 */
public record Registered(
    ItemId id,
    ItemCode code,
    int version,
    LocalDate registeredOn,
    Retirement retirement,
    ItemDetails details) {

  public ItemKind kind() {
    return details.kind();
  }
}
