package club.ascham.concern;

import club.ascham.standing.State;
import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All that stands against one thing on one day, the heaviest and then the oldest first.
 *
 * <p>What counts as a danger is withdrawn, did not pass an inspection, or has a dangerous report
 * open against it. Every page of the bench says so first; set-up from the string on, and weighing,
 * are refused by page and API alike, while limbs and loops may be put right before. Advice from
 * before the danger was known is shown no more.
 */
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
    all = oneLineEach(all).stream().distinct().sorted(HEAVIEST_FIRST).toList();
  }

  private record Told(Matter matter, Weight weight, long source) {}

  /** Something told of several parts at once is one line that names them all. */
  private static List<Concern> oneLineEach(List<Concern> all) {
    Map<Told, Concern> told = new LinkedHashMap<>();
    List<Concern> lines = new ArrayList<>();
    for (Concern one : all) {
      if (one.matter() == Matter.REPORTED || one.matter() == Matter.WATCHED) {
        told.merge(told(one), one, Against::together);
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
        one.work(),
        one.said().startsWith(one.code())
            ? both + one.said().substring(one.code().length())
            : one.said(),
        one.brief(),
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

  /** What weighs most, the oldest of it; empty where nothing is known. */
  public Optional<Concern> heaviest() {
    return all.stream().findFirst();
  }

  /**
   * What a line of a list adds to the state that stands beside it; null: nothing. Of what is
   * withdrawn it says why, before anything older.
   */
  public Beside beside(State state) {
    Matter said = sameAs(state);
    return Beside.of(
        all.stream()
            .filter(one -> one.matter() != said)
            .sorted(
                Comparator.comparing(
                    one -> state == State.WITHDRAWN && one.matter() != Matter.WITHDRAWN))
            .toList());
  }

  /** What a line of a list says of it; null: nothing. */
  public Beside beside() {
    return Beside.of(all);
  }

  private static Matter sameAs(State state) {
    return switch (state) {
      case RETIRED -> Matter.RETIRED;
      case IN_THE_WORKSHOP -> Matter.NOT_SET_UP;
      case TO_BE_CHECKED -> Matter.NOT_CHECKED;
      case ON_LOAN, READY, WITHDRAWN -> null;
    };
  }

  /** What forbids stringing and drawing it, the heaviest first. */
  public List<Concern> dangers() {
    return all.stream().filter(Concern::isDanger).toList();
  }

  /** Whether nobody strings or draws it as it is. */
  public boolean staysUnstrung() {
    return !dangers().isEmpty();
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

  /** Only what keeps it in. */
  public Against blocking() {
    return new Against(of(Weight.BLOCKS));
  }

  /** Only what whoever has it in hand should know. */
  public Against notes() {
    return new Against(of(Weight.NOTE));
  }

  /** Without what the other says already, of whatever parts. */
  public Against beyond(Against other) {
    Set<Told> said = other.all.stream().map(Against::told).collect(Collectors.toSet());
    return new Against(all.stream().filter(one -> !said.contains(told(one))).toList());
  }

  private static Told told(Concern one) {
    return new Told(one.matter(), one.weight(), one.source());
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
