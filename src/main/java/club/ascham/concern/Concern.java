package club.ascham.concern;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.upkeep.Work;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;

/**
 * One thing that stands against a bow, in the line that every page shows.
 *
 * @param since the club's day from which it stands
 * @param item the part it lies in; null: the rig as a whole, or several parts
 * @param code of that part, or the rig's name; of several, by commas
 * @param rig null: it lies in the part alone
 * @param work that it is about; null: none
 * @param said what is known, one sentence
 * @param brief the same in two to four words, for a line of a list
 * @param ends what ends it, one sentence
 * @param page where that is done
 * @param source the row of the record it comes from
 */
@TemplateData
public record Concern(
    Weight weight,
    Matter matter,
    LocalDate since,
    ItemId item,
    String code,
    RigId rig,
    Work work,
    String said,
    String brief,
    String ends,
    String page,
    long source) {

  /** What may break in the hand: a danger that nobody has answered or released yet. */
  private static final Set<Matter> DANGERS =
      EnumSet.of(Matter.WITHDRAWN, Matter.INSPECTION_FAILED, Matter.REPORTED);

  public boolean blocks() {
    return weight == Weight.BLOCKS;
  }

  /** Whether nobody strings or draws the bow for it. */
  public boolean isDanger() {
    return blocks() && DANGERS.contains(matter);
  }
}
