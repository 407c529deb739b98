package club.ascham.store;

import club.ascham.Settings;

/** A file that owes no scrubbing. */
public final class ScrubbingOf {
  private ScrubbingOf() {}

  public static Scrubbing nothingOwed(Settings settings) {
    return new Scrubbing(settings, null, new SameFile());
  }
}
