package club.ascham.upkeep;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** When work is due, by a model that counts by hand. */
final class PlanModel {
  record Rule(String kind, String work, Integer days, Integer loans, Integer shots) {}

  static final class Item {
    final String kind;
    LocalDate registeredOn;
    LocalDate boughtOn;
    LocalDate firstUsed;
    boolean retired;
    final List<Line> lines = new ArrayList<>();
    final Map<String, List<Instant>> passed = new HashMap<>();

    Item(String kind, LocalDate registeredOn) {
      this.kind = kind;
      this.registeredOn = registeredOn;
    }
  }

  static final class Line {
    final Instant out;
    Instant back;
    Integer shots;

    Line(Instant out) {
      this.out = out;
    }
  }

  private final ZoneId zone;

  PlanModel(ZoneId zone) {
    this.zone = zone;
  }

  final Map<Long, Item> items = new HashMap<>();
  final Map<Long, Rule> rules = new HashMap<>();

  /** A line {@code item/rule/day} for everything planned, as the file's view is asked for. */
  Set<String> planned() {
    Set<String> planned = new TreeSet<>();
    items.forEach(
        (id, item) ->
            rules.forEach(
                (ruleId, rule) -> {
                  if (!item.retired && rule.kind().equals(item.kind)) {
                    planned.add(id + "/" + ruleId + "/" + due(item, rule));
                  }
                }));
    return planned;
  }

  private LocalDate due(Item item, Rule rule) {
    List<Instant> done =
        rule.work().equals("STRING_REPLACEMENT")
            ? List.of()
            : item.passed.getOrDefault(rule.work(), List.of());
    LocalDate start =
        Stream.of(item.firstUsed, item.boughtOn, item.registeredOn)
            .filter(Objects::nonNull)
            .findFirst()
            .orElseThrow();
    Optional<Instant> last = done.stream().max(Comparator.naturalOrder());
    LocalDate since = last.map(this::day).orElse(start);
    // What happens at the first moment of the first day counts.
    Instant after = last.orElse(start.atStartOfDay(zone).toInstant().minusMillis(1));
    return Stream.of(byDays(since, rule), byLoans(item, after, rule), byShots(item, after, rule))
        .filter(Objects::nonNull)
        .min(Comparator.naturalOrder())
        .orElse(null);
  }

  private LocalDate byDays(LocalDate from, Rule rule) {
    return rule.days() == null ? null : from.plusDays(rule.days());
  }

  private LocalDate byLoans(Item item, Instant from, Rule rule) {
    if (rule.loans() == null) {
      return null;
    }
    List<LocalDate> out =
        item.lines.stream()
            .map(line -> line.out)
            .filter(from::isBefore)
            .sorted()
            .map(this::day)
            .toList();
    return out.size() < rule.loans() ? null : out.get(rule.loans() - 1);
  }

  private LocalDate byShots(Item item, Instant from, Rule rule) {
    if (rule.shots() == null) {
      return null;
    }
    List<Line> back =
        item.lines.stream()
            .filter(line -> line.back != null && from.isBefore(line.back))
            .sorted(Comparator.comparing(line -> line.back))
            .toList();
    int fired = 0;
    for (Line line : back) {
      fired += line.shots == null ? 0 : line.shots;
      if (fired >= rule.shots()) {
        return day(line.back);
      }
    }
    return null;
  }

  private LocalDate day(Instant moment) {
    return LocalDate.ofInstant(moment, zone);
  }
}
