package club.ascham.concern;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** All that stands against one thing on one day, the heaviest and then the oldest first. */
public record Against(List<Concern> all) {
  private static final Comparator<Concern> HEAVIEST_FIRST =
      Comparator.comparing(Concern::weight)
          .thenComparing(Concern::since)
          .thenComparing(Concern::matter)
          .thenComparing(Concern::code)
          .thenComparing(Concern::source);

  public static final Against NOTHING = new Against(List.of());

  public Against {
    all = all.stream().distinct().sorted(HEAVIEST_FIRST).toList();
  }

  public boolean isNothing() {
    return all.isEmpty();
  }

  /** Whether something keeps it in. */
  public boolean blocks() {
    return all.stream().anyMatch(Concern::blocks);
  }

  /** Whether it may go out only with a reason. */
  public boolean speaks() {
    return !blocks() && all.stream().anyMatch(one -> one.weight() == Weight.SPEAKS_AGAINST);
  }

  public List<Concern> of(Weight weight) {
    return all.stream().filter(one -> one.weight() == weight).toList();
  }

  public boolean has(Matter matter) {
    return all.stream().anyMatch(one -> one.matter() == matter);
  }

  /** Without what these matters say: a page that is about them says it itself. */
  public Against without(Collection<Matter> matters) {
    return new Against(all.stream().filter(one -> !matters.contains(one.matter())).toList());
  }

  public Against and(Against other) {
    if (isNothing() || other.isNothing()) {
      return isNothing() ? other : this;
    }
    List<Concern> both = new ArrayList<>(all);
    both.addAll(other.all);
    return new Against(both);
  }

  /** Why it stays in, and what would end that; of several the first, and how many more. */
  public String keptIn() {
    List<Concern> blocking = of(Weight.BLOCKS);
    if (blocking.isEmpty()) {
      return "";
    }
    Concern first = blocking.get(0);
    int more = blocking.size() - 1;
    return first.said()
        + " "
        + first.ends()
        + (more == 0
            ? ""
            : " " + more + (more == 1 ? " more thing keeps" : " more things keep") + " it in.");
  }

  /** What one weight says, as one text. */
  public String said(Weight weight) {
    return of(weight).stream().map(Concern::said).collect(Collectors.joining(" "));
  }
}
