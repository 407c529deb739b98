package club.ascham.bow;

/** The two kinds of stringer in use. */
public enum StringerKind {
  TIP_TO_TIP,
  TIP_AND_SADDLE
}
