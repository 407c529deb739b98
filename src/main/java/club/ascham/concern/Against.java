package club.ascham.concern;

import club.ascham.standing.State;
import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** All that stands against one thing on one day, the heaviest and then the oldest first. */
@TemplateData
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

  /** What weighs most, the oldest of it; empty where nothing is known. */
  public Optional<Concern> heaviest() {
    return all.stream().findFirst();
  }

  /** What a line of a list adds to the state that stands beside it; null: nothing. */
  public Concern beside(State state) {
    Matter said = sameAs(state);
    for (Concern one : all) {
      if (one.matter() != said) {
        return one;
      }
    }
    return null;
  }

  private static Matter sameAs(State state) {
    return switch (state) {
      case RETIRED -> Matter.RETIRED;
      case WITHDRAWN -> Matter.WITHDRAWN;
      case IN_THE_WORKSHOP -> Matter.NOT_SET_UP;
      case TO_BE_CHECKED -> Matter.NOT_CHECKED;
      case ON_LOAN, READY -> null;
    };
  }

  public List<Concern> of(Weight weight) {
    return all.stream().filter(one -> one.weight() == weight).toList();
  }

  public boolean has(Matter matter) {
    return all.stream().anyMatch(one -> one.matter() == matter);
  }

  /** Where a withdrawal is released; null: nothing is withdrawn. */
  public String release() {
    return all.stream()
        .filter(one -> one.matter() == Matter.WITHDRAWN)
        .map(Concern::page)
        .findFirst()
        .orElse(null);
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
