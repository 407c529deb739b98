package club.ascham.fleet;

import java.util.List;

/**
 * The head of a list that would not fit.
 *
 * @param more how many were left out
 */
public record Shown<T>(List<T> first, int more) {
  public static <T> Shown<T> of(List<T> all, int atMost) {
    return all.size() <= atMost
        ? new Shown<>(all, 0)
        : new Shown<>(all.subList(0, atMost), all.size() - atMost);
  }
}
