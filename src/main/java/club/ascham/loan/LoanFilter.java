package club.ascham.loan;

import club.ascham.borrower.BorrowerId;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import java.util.StringJoiner;

/**
 * What a list of loans is narrowed to; it stands in the address, but for the text, which may be a
 * name.
 *
 * @param kind null: both
 * @param text part of a borrower's or leader's name, or of a code; null: all
 * @param borrower null: everyone's
 * @param page from 1
 */
public record LoanFilter(
    LoanShow show, LoanKind kind, String text, BorrowerId borrower, int page, int size) {
  /** In an address: narrowed to the words that {@link club.ascham.web.Sought} keeps. */
  public static final String NAMED = "named";

  static final LoanFilter OPEN =
      new LoanFilter(LoanShow.OPEN, null, null, null, 1, PageAsked.USUAL);

  /** A faulty field counts as not given; its fault stays at it. */
  public static LoanFilter parse(Typed typed) {
    LoanShow show = typed.word("show", LoanShow.class);
    Integer borrower = typed.whole("borrower", 1, Integer.MAX_VALUE);
    PageAsked asked = PageAsked.parse(typed);
    return new LoanFilter(
        show == null ? LoanShow.OPEN : show,
        typed.word("kind", LoanKind.class),
        typed.optional("q", 80),
        borrower == null ? null : new BorrowerId(borrower),
        asked.page(),
        asked.size());
  }

  static LoanFilter of(BorrowerId borrower, LoanShow show) {
    return new LoanFilter(show, null, null, borrower, 1, PageAsked.LARGEST);
  }

  /** Without names nobody is looked up by name. */
  public LoanFilter withoutText() {
    return new LoanFilter(show, kind, null, null, page, size);
  }

  int skipped() {
    return (page - 1) * size;
  }

  /** The address of another page of the same list. */
  public String address(int otherPage) {
    StringJoiner query = new StringJoiner("&", "/loans?", "");
    query.add("show=" + Words.of(show));
    if (kind != null) {
      query.add("kind=" + Words.of(kind));
    }
    if (text != null) {
      query.add(NAMED + "=on");
    }
    if (borrower != null) {
      query.add("borrower=" + borrower.value());
    }
    return query.add("page=" + otherPage).toString();
  }
}
