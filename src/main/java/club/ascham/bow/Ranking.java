package club.ascham.bow;

import java.util.List;

/**
 * The rigs on offer, sorted for one archer.
 *
 * @param suited best first
 * @param unsuited in the order they were handed in
 */
public record Ranking<T>(List<Suited<T>> suited, List<Unsuited<T>> unsuited) {
  public Ranking {
    suited = List.copyOf(suited);
    unsuited = List.copyOf(unsuited);
  }
}
