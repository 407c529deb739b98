package club.ascham.people;

/** Who must have a second step before anything else is open to them. */
enum DoorRule {
  NOBODY("nobody"),
  OFFICERS("officers"),
  EVERYONE("everyone");

  private final String said;

  DoorRule(String said) {
    this.said = said;
  }

  String said() {
    return said;
  }
}
