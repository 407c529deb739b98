package club.ascham.web;

import jakarta.ws.rs.NotFoundException;

/** An address that names something that does not exist. */
public class NoSuchThing extends NotFoundException {
  private static final long serialVersionUID = 1L;

  /** The message is shown: "There is no rig 12." */
  public NoSuchThing(String message) {
    super(message);
  }
}
