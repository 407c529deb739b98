package club.ascham.exchange;

import club.ascham.id.RigId;
import club.ascham.rig.LentBows;
import club.ascham.rig.Refusal;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A bow that leaves today by a file, or is changed by one while it is out, suits whoever has it by
 * the rule of the issue. What left or was changed on an earlier day is history: it is taken as it
 * was, and judged when it is next extended or changed.
 */
abstract class SuitsWhoHasIt implements AfterRows {
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

  /** The new rows of today, {@code ?1} the rows that were added and {@code ?2} the day's begin. */
  abstract String touched();

  /** The column that names what makes the bow another one. */
  abstract String column();

  @Override
  public List<BadCell> check(Added added) {
    Map<RigId, Long> first = new LinkedHashMap<>();
    rows.list(Touched.class, touched(), added.numbers(), time.beginOf(time.today()))
        .forEach(one -> first.putIfAbsent(one.rig(), one.number()));
    List<BadCell> bad = new ArrayList<>();
    lent.refusals(first.keySet())
        .forEach(
            (rig, refusals) -> {
              for (Refusal refusal : refusals) {
                bad.add(added.at(first.get(rig), column(), refusal.message()));
              }
            });
    return bad;
  }
}
