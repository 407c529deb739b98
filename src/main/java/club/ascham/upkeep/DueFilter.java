package club.ascham.upkeep;

import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import java.util.StringJoiner;

/**
 * What a list of due work is narrowed to; it stands in the address.
 *
 * @param kind of item; null: all
 * @param work null: all
 * @param urgency null: all
 * @param page from 1
 */
record DueFilter(Kind kind, Work work, Urgency urgency, int page, int size) {
  /** The kinds of item that anything is planned for. */
  enum Kind {
    RISER,
    LIMBS,
    BOW,
    STRING,
    STRINGER,
    ARROWS
  }

  /** A faulty field counts as not given; its fault stays at it. */
  static DueFilter parse(Typed typed) {
    PageAsked asked = PageAsked.parse(typed);
    return new DueFilter(
        typed.word("kind", Kind.class),
        typed.word("work", Work.class),
        typed.word("status", Urgency.class),
        asked.page(),
        asked.size());
  }

  int skipped() {
    return (page - 1) * size;
  }

  boolean narrows() {
    return kind != null || work != null;
  }

  /** The address of another page of the same list. */
  String address(int otherPage) {
    StringJoiner query = new StringJoiner("&", "/upkeep?", "");
    if (kind != null) {
      query.add("kind=" + Words.of(kind));
    }
    if (work != null) {
      query.add("work=" + Words.of(work));
    }
    return query.add("page=" + otherPage).toString();
  }
}
