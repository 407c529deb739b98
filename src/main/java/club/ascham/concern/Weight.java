package club.ascham.concern;

import club.ascham.form.Words;
import io.quarkus.qute.TemplateData;

/** How much something that is known speaks against letting a thing go out; heaviest first. */
@TemplateData
public enum Weight {
  /** It may not go out. */
  BLOCKS("Keeps it in", "stop"),
  /** It may go out with a reason of whole words, which is kept. */
  SPEAKS_AGAINST("Speaks against", "caution"),
  /** Whoever has it in hand should know. */
  NOTE("Note", "note");

  private final String said;
  private final String mark;

  Weight(String said, String mark) {
    this.said = said;
    this.mark = mark;
  }

  /** As a line begins: {@code Speaks against}. */
  public String said() {
    return said;
  }

  /** The name of its drawing. */
  public String mark() {
    return mark;
  }

  /** Its word in JSON, and the class of its line: {@code speaks-against}. */
  public String word() {
    return Words.of(this);
  }
}
