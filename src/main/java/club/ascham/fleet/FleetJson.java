package club.ascham.fleet;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** The fleet's figures in JSON. */
record FleetJson(
    LocalDate on,
    Count rigs,
    List<Count> byState,
    List<ReadyOf> byBowLength,
    List<ReadyOf> byMarkedWeight,
    List<ReadyOf> byHand,
    Count loansOverdue,
    Count inspectionsOverdue,
    Count stringsDue,
    Count withdrawals,
    Count askBack,
    Course course) {

  /** A figure. */
  record Count(String value, int count, String rows) {
    static Count of(Figure figure) {
      return new Count(figure.word(), figure.count(), "/api/fleet/rows?" + figure.query());
    }

    static List<Count> of(List<Figure> figures) {
      return figures.stream().map(Count::of).toList();
    }
  }

  /** How many are ready of how many there are. */
  record ReadyOf(String value, Count ready, Count all) {
    static List<ReadyOf> of(List<Fleet.Line> lines) {
      return lines.stream()
          .map(line -> new ReadyOf(line.all().word(), Count.of(line.ready()), Count.of(line.all())))
          .toList();
    }
  }

  /** What could be fielded for a course. */
  record Course(
      LocalDate on,
      Count asTheyAre,
      Count afterWork,
      Count notCounted,
      List<Count> workFirst,
      List<Count> hindered,
      List<Fielded> byBowLengthAndHand) {}

  /** Rigs of one length for one hand. */
  record Fielded(String bowLength, String hand, Count asTheyAre, Count afterWork) {}

  static FleetJson of(Fleet fleet) {
    return new FleetJson(
        fleet.today(),
        Count.of(fleet.all()),
        Count.of(fleet.byState()),
        ReadyOf.of(fleet.byLength()),
        ReadyOf.of(fleet.byWeight()),
        ReadyOf.of(fleet.byHand()),
        Count.of(fleet.loansOverdueFigure()),
        Count.of(fleet.inspectionsOverdueFigure()),
        Count.of(fleet.stringsDueFigure()),
        Count.of(fleet.withdrawalsFigure()),
        Count.of(fleet.askBackFigure()),
        new Course(
            fleet.courseDay(),
            Count.of(fleet.asTheyAre()),
            Count.of(fleet.afterWork()),
            Count.of(fleet.notCounted()),
            Count.of(fleet.workFirst()),
            Count.of(fleet.hindered()),
            fleet.courseLines().stream().flatMap(FleetJson::fielded).toList()));
  }

  private static Stream<Fielded> fielded(Fleet.CourseLine line) {
    return line.cells().stream()
        .filter(cell -> !cell.isNone())
        .map(
            cell ->
                new Fielded(
                    line.word(), cell.hand(), Count.of(cell.asItIs()), Count.of(cell.afterWork())));
  }

  static final String EXAMPLE =
      """
      {"on": "2026-06-02",
       "rigs": {"value": "all", "count": 4, "rows": "/api/fleet/rows?list=rigs"},
       "byState": [{"value": "ready", "count": 3, "rows": "/api/fleet/rows?list=rigs&state=ready"},
                   {"value": "on-loan", "count": 1, "rows": "/api/fleet/rows?list=rigs&state=on-loan"}],
       "byBowLength": [{"value": "66",
         "ready": {"value": "66", "count": 3, "rows": "/api/fleet/rows?list=rigs&state=ready&length=66"},
         "all": {"value": "66", "count": 4, "rows": "/api/fleet/rows?list=rigs&length=66"}}],
       "byMarkedWeight": [{"value": "up-to-22",
         "ready": {"value": "up-to-22", "count": 3, "rows": "/api/fleet/rows?list=rigs&state=ready&weight=up-to-22"},
         "all": {"value": "up-to-22", "count": 4, "rows": "/api/fleet/rows?list=rigs&weight=up-to-22"}}],
       "byHand": [{"value": "right",
         "ready": {"value": "right", "count": 3, "rows": "/api/fleet/rows?list=rigs&state=ready&hand=right"},
         "all": {"value": "right", "count": 4, "rows": "/api/fleet/rows?list=rigs&hand=right"}}],
       "loansOverdue": {"value": "loans-overdue", "count": 0, "rows": "/api/fleet/rows?list=loans-overdue"},
       "inspectionsOverdue": {"value": "inspections-overdue", "count": 0, "rows": "/api/fleet/rows?list=inspections-overdue"},
       "stringsDue": {"value": "strings-due", "count": 2, "rows": "/api/fleet/rows?list=strings-due"},
       "withdrawals": {"value": "withdrawals", "count": 0, "rows": "/api/fleet/rows?list=withdrawals"},
       "askBack": {"value": "ask-back", "count": 0, "rows": "/api/fleet/rows?list=ask-back"},
       "course": {"on": "2026-06-09",
         "asTheyAre": {"value": "as-it-is", "count": 3, "rows": "/api/fleet/rows?list=rigs&course=as-it-is"},
         "afterWork": {"value": "after-work", "count": 1, "rows": "/api/fleet/rows?list=rigs&course=after-work"},
         "notCounted": {"value": "not", "count": 0, "rows": "/api/fleet/rows?list=rigs&course=not"},
         "workFirst": [{"value": "back-by-then", "count": 1, "rows": "/api/fleet/rows?list=rigs&because=back-by-then"}],
         "hindered": [],
         "byBowLengthAndHand": [{"bowLength": "66", "hand": "right",
           "asTheyAre": {"value": "as-it-is", "count": 3, "rows": "/api/fleet/rows?list=rigs&hand=right&length=66&course=as-it-is"},
           "afterWork": {"value": "after-work", "count": 1, "rows": "/api/fleet/rows?list=rigs&hand=right&length=66&course=after-work"}}]}}
      """;
}
