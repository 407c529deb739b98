package club.ascham.concern;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    all = oneLineEach(all).stream().distinct().sorted(HEAVIEST_FIRST).toList();
  }

  private record Told(Matter matter, Weight weight, long source) {}

  /** Something told of several parts at once is one line that names them all. */
  private static List<Concern> oneLineEach(List<Concern> all) {
    Map<Told, Concern> told = new LinkedHashMap<>();
    List<Concern> lines = new ArrayList<>();
    for (Concern one : all) {
      if (one.matter() == Matter.REPORTED || one.matter() == Matter.WATCHED) {
        told.merge(new Told(one.matter(), one.weight(), one.source()), one, Against::together);
      } else {
        lines.add(one);
      }
    }
    lines.addAll(told.values());
    return lines;
  }

  /** A sentence begins with the codes that it is about. */
  private static Concern together(Concern one, Concern other) {
    List<String> codes = List.of(one.code().split(", "));
    if (codes.contains(other.code())) {
      return one;
    }
    String both = one.code() + ", " + other.code();
    return new Concern(
        one.weight(),
        one.matter(),
        one.since(),
        null,
        both,
        null,
        both + one.said().substring(one.code().length()),
        one.ends(),
        one.page(),
        one.source());
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

  /** What one weight says, as one text. */
  public String said(Weight weight) {
    return of(weight).stream().map(Concern::said).collect(Collectors.joining(" "));
  }
}
