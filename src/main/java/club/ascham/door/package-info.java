/**
 * The door: who comes in, how, and for how long.
 *
 * <p>Two ways lead in, and no third: a session for people ({@link club.ascham.door.SessionCookie}),
 * and name with password or access key in each request for programs, under {@code /api} alone
 * ({@link club.ascham.door.BasicPassword}; a key alone where a second step is on or asked for).
 * Both ask {@link club.ascham.door.SignIn}. Three kinds of link or code make a secret: an officer's
 * one-time link, the first officer's code in the log, an access key from one's own page. All are
 * 192 random bits, and only their digests are kept.
 */
package club.ascham.door;
