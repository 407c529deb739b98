/**
 * Upkeep: the rules, what they plan for each item and by when, and asking for more of it. Others
 * read {@link club.ascham.upkeep.DueWork} and ask through {@link club.ascham.upkeep.AskForWork};
 * when work is due is derived by the database's view {@code work_due}, so that no page can disagree
 * with another.
 *
 * <p>What is planned is kept in {@code upkeep_plan} by triggers, since nearly every page asks
 * whether an inspection is overdue; the view {@code upkeep_reckoned} is the truth, and a test
 * compares. While files are taken in ({@code taking_in}) nothing is planned row by row: it is
 * reckoned once, when all of it is in.
 */
package club.ascham.upkeep;
