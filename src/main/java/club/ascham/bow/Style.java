package club.ascham.bow;

/** How the fingers hold the string, which decides the tiller a rig is set to. */
public enum Style {
  SPLIT_FINGER,
  THREE_UNDER,
  STRING_WALKING
}
