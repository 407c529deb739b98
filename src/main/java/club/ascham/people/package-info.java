/**
 * Who works here and what each may do: accounts, their secrets, the inspector's permit. Others ask
 * {@link club.ascham.people.Actor} who is acting; how people come in is the {@link
 * club.ascham.door}'s.
 *
 * <p>An officer may everything; a volunteer receives, checks and inspects, and sets no rules,
 * people or prices; the committee reads, without names. The permit, to its last day, is asked for
 * in the use case: turning limb bolts, signing their inspection, releasing a withdrawal.
 */
package club.ascham.people;
