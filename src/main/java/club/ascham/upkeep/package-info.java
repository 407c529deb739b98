/**
 * Upkeep: what has to be done to each item and by when, doing it, asking for more of it, and
 * recalls. Others read {@link club.ascham.upkeep.DueWork}; when work is due is derived by the
 * database's view {@code work_due}, so that no page can disagree with another.
 */
package club.ascham.upkeep;
