package club.ascham.mechanics;

/** A number for which the formulas have no answer, named as the caller named it. */
public final class OutOfDomain extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String quantity;

  public OutOfDomain(String quantity, String message) {
    super(message);
    this.quantity = quantity;
  }

  public String quantity() {
    return quantity;
  }
}
