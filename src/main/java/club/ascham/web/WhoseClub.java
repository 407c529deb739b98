package club.ascham.web;

/** Whose pages these are: the frame around them, and the door, say it. */
public interface WhoseClub {
  String name();

  /** Whether all of it is invented, for trying. */
  boolean demo();
}
