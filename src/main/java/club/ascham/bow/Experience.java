package club.ascham.bow;

/** How far an archer has come, as nearly as choosing a bow needs to know. */
public enum Experience {
  BEGINNER,
  IMPROVER,
  EXPERIENCED
}
