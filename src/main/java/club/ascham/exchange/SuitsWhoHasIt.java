package club.ascham.exchange;

import club.ascham.assembly.LentBows;
import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A bow that leaves today by a file, or is changed by one while it is out, suits whoever has it by
 * the rule of the issue. What left or was changed on an earlier day is history: it is taken as it
 * was, and judged when it is next extended or changed.
 */
@ApplicationScoped
class SuitsWhoHasIt {
  private final Rows rows;
  private final LentBows lent;
  private final ClubTime time;

  SuitsWhoHasIt(Rows rows, LentBows lent, ClubTime time) {
    this.rows = rows;
    this.lent = lent;
    this.time = time;
  }

  /** A new row by which a bow that is out is another one than it was. */
  record Touched(long number, RigId rig) {}

  /**
   * @param touched the new rows of today as {@link Touched}: {@code ?1} what was added, {@code ?2}
   *     the day's begin
   * @param column that names what makes the bow another one
   */
  List<BadCell> check(AfterRows.Added added, String touched, String column) {
    Map<RigId, Long> first = new LinkedHashMap<>();
    rows.list(Touched.class, touched, added.numbers(), time.beginOf(time.today()))
        .forEach(one -> first.putIfAbsent(one.rig(), one.number()));
    List<BadCell> bad = new ArrayList<>();
    lent.refusals(first.keySet())
        .forEach(
            (rig, refusals) ->
                bad.add(
                    added.at(
                        first.get(rig),
                        column,
                        refusals.stream()
                            .map(Obstacle::message)
                            .distinct()
                            .collect(Collectors.joining(" ")))));
    return bad;
  }
}
