/**
 * Upkeep: the rules, what they plan for each item and by when, and asking for more of it. Others
 * read {@link club.ascham.upkeep.DueWork} and ask through {@link club.ascham.upkeep.AskForWork};
 * when work is due is derived by the database's view {@code work_due}, so that no page can disagree
 * with another.
 */
package club.ascham.upkeep;
