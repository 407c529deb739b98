package club.ascham.register;

import club.ascham.form.Words;
import io.quarkus.qute.TemplateData;

/** Why the club no longer has an item. */
@TemplateData
public enum RetiredWhy {
  SCRAPPED,
  SOLD,
  LOST;

  public String word() {
    return Words.of(this);
  }
}
