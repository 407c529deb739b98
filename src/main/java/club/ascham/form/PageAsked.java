package club.ascham.form;

/** Which page of a list is asked for, from 1, and how many lines it may have. */
public record PageAsked(int page, int size) {
  public static final int USUAL = 40;
  public static final int LARGEST = 200;
  private static final int LAST = 100_000;

  /** Reads {@code page} and {@code size}; a faulty field counts as not given, its fault stays. */
  public static PageAsked parse(Typed typed) {
    Integer page = typed.whole("page", 1, LAST);
    Integer size = typed.whole("size", 1, LARGEST);
    return new PageAsked(page == null ? 1 : page, size == null ? USUAL : size);
  }

  /** The nearest page there can be. */
  public static PageAsked nearest(int page, int size) {
    return new PageAsked(Math.max(1, Math.min(LAST, page)), Math.max(1, Math.min(LARGEST, size)));
  }

  /** How many lines come before it. */
  public int skipped() {
    return (page - 1) * size;
  }
}
