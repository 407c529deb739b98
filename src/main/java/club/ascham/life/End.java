package club.ascham.life;

import io.quarkus.qute.TemplateData;

/** How a part's time ended, as far as it has. Only {@link #FAILED} tells how long parts last. */
@TemplateData
public enum End {
  IN_USE("in use"),
  /** Withdrawn or failed at an inspection, never lent again, and scrapped. */
  FAILED("failed"),
  /** Taken off in time and kept as a spare. */
  TAKEN_OFF("taken off, kept"),
  /** Scrapped without a fault on record: its age, or a dealer's offer. */
  SCRAPPED("scrapped, no fault seen"),
  SOLD("sold"),
  LOST("lost");

  private final String said;

  End(String said) {
    this.said = said;
  }

  public String said() {
    return said;
  }
}
