package club.ascham.worksheet;

import club.ascham.form.Typed;

/** Which page of a list is asked for, from 1. */
record PageAsked(int page, int size) {
  private static final int USUAL = 40;
  private static final int LARGEST = 200;

  /** Reads {@code page} and {@code size}; a faulty field counts as not given, its fault stays. */
  static PageAsked parse(Typed typed) {
    Integer page = typed.whole("page", 1, 100_000);
    Integer size = typed.whole("size", 1, LARGEST);
    return new PageAsked(page == null ? 1 : page, size == null ? USUAL : size);
  }
}
