package club.ascham.backup;

import java.util.Locale;

/** A file's size as people say it. */
public final class Size {
  private static final long KB = 1_000;

  private Size() {}

  /** {@code 840 bytes}, {@code 96 kB}, {@code 1.4 MB}. */
  public static String said(long bytes) {
    if (bytes < KB) {
      return bytes + " bytes";
    }
    if (bytes < KB * KB) {
      return bytes / KB + " kB";
    }
    double mb = (double) bytes / (KB * KB);
    return mb < KB
        ? String.format(Locale.ROOT, "%.1f MB", mb)
        : String.format(Locale.ROOT, "%.1f GB", mb / KB);
  }
}
