/**
 * Who works here and what each may do: accounts, sign-in, the inspector's permit. Others ask {@link
 * club.ascham.people.Actor} who is acting.
 *
 * <p>Two ways lead in, and no third: a session for people ({@link
 * club.ascham.people.SessionCookie}), and name with password or access key in each request for
 * programs, under {@code /api} alone ({@link club.ascham.people.BasicPassword}; a key alone where a
 * second step is on or asked for). Both ask {@link club.ascham.people.SignIn}. Three kinds of link
 * or code make a secret: an officer's one-time link, the first officer's code in the log, an access
 * key from one's own page. All are 192 random bits, and only their digests are kept.
 *
 * <p>An officer may everything; a volunteer receives, checks and inspects, and sets no rules,
 * people or prices; the committee reads, without names. The permit, to its last day, is asked for
 * in the use case: turning limb bolts, signing their inspection, releasing a withdrawal.
 */
package club.ascham.people;
