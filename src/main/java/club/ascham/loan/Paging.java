package club.ascham.loan;

import java.util.function.IntFunction;

/**
 * Where one page of a list lies in it.
 *
 * @param from number of the first line shown, from 1
 * @param earlier address of the page before; null: this is the first
 * @param later address of the page after; null: this is the last
 */
public record Paging(int from, int to, int total, String earlier, String later) {
  /** The page of a list whose addresses differ in their page's number alone. */
  public static Paging of(int page, int size, int total, IntFunction<String> address) {
    int skipped = (page - 1) * size;
    return new Paging(
        skipped + 1,
        Math.min(skipped + size, total),
        total,
        page == 1 ? null : address.apply(page - 1),
        skipped + size >= total ? null : address.apply(page + 1));
  }

  public boolean isWhole() {
    return earlier == null && later == null;
  }
}
