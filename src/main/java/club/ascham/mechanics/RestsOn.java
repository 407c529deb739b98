package club.ascham.mechanics;

/** How it is said what a number rests on. */
final class RestsOn {
  static final String NONE_YET = "no adjustment of this bow yet";

  private RestsOn() {}

  static String from(int adjustments) {
    return adjustments == 1
        ? "from 1 adjustment of this bow"
        : "from " + adjustments + " adjustments of this bow";
  }

  static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
