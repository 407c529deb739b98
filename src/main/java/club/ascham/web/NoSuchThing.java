package club.ascham.web;

/** An address that names something that does not exist. */
public class NoSuchThing extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** The message is shown: "There is no rig 12." */
  public NoSuchThing(String message) {
    super(message);
  }
}
