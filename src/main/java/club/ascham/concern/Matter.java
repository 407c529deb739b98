package club.ascham.concern;

/** What kind of thing is known, in the order in which it is told. */
public enum Matter {
  RETIRED,
  WITHDRAWN,
  INSPECTION_FAILED,
  /** Somebody told of a sign, and nobody has answered yet. */
  REPORTED,
  /** Work that a rule plans is overdue. */
  OVERDUE,
  /** Its bow's readings change by more than readers differ. */
  CHANGING,
  /** Work was asked for out of turn. */
  ASKED,
  NOT_SET_UP,
  NOT_CHECKED,
  /** A report was answered with <i>watch</i>, to an end day. */
  WATCHED,
  /** Limbs were not on a bow scale for longer than the club lets pass. */
  WEIGHING_DUE,
  ARROWS_NOT_WEIGHED,
  /** Fewer arrows of a set came back than went out, and nobody has made it up. */
  ARROWS_MISSING
}
