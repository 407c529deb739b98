package club.ascham.concern;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.upkeep.Work;
import java.time.LocalDate;

/**
 * Something the record says of one thing, as far as it may stand against it.
 *
 * @param item the thing; null: a rig as a whole
 * @param code of the item on its label, or the rig's name
 * @param rig null: it is known of the item, wherever that is fitted
 * @param since the club's day from which it is so; of planned work, its last day in time
 * @param until of planned work, the last day it may still go out with a reason, null for none such;
 *     of what is watched, the last day
 * @param grave blocking or dangerous, by its matter; of a withdrawal, whether nobody has decided
 *     what it needs; of what is not set up, whether it lacks a part
 * @param work that it asks for or that failed; null: none, or to be decided
 * @param kept of a withdrawal, whether it is kept as it is after an accident
 * @param why in the words that were kept
 * @param source the row it comes from
 * @param unsureOf the bow, by its code, of which nobody knows the part; null: the part is known
 */
record Fact(
    Matter matter,
    ItemId item,
    String code,
    RigId rig,
    LocalDate since,
    LocalDate until,
    boolean grave,
    Work work,
    boolean kept,
    String why,
    long source,
    String unsureOf) {

  /** The same of one bow of several: its name leads the sentence. */
  Fact named() {
    return new Fact(
        matter,
        item,
        code,
        rig,
        since,
        until,
        grave,
        work,
        kept,
        code + ": " + Character.toLowerCase(why.charAt(0)) + why.substring(1),
        source,
        unsureOf);
  }
}
