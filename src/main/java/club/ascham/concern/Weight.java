package club.ascham.concern;

import club.ascham.form.Words;

/** How much something that is known speaks against letting a thing go out; heaviest first. */
public enum Weight {
  /** It may not go out. */
  BLOCKS,
  /** It may go out with a reason of whole words, which is kept. */
  SPEAKS_AGAINST,
  /** Whoever has it in hand should know. */
  NOTE;

  /** As people say it: {@code speaks against}. */
  public String said() {
    return Words.said(this);
  }

  /** Its word in JSON, and the class of its line: {@code speaks-against}. */
  public String word() {
    return Words.of(this);
  }
}
