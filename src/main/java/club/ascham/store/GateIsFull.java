package club.ascham.store;

/** Too many people are saving at once; nothing was changed, and trying again shortly will do. */
public class GateIsFull extends RuntimeException {
  private static final long serialVersionUID = 1L;
}
