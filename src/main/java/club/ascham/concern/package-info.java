/**
 * What stands against a bow: derived from facts at any date and never stored. Whatever shows or
 * judges a thing asks {@link club.ascham.concern.Concerns} and shows the same line; nobody reckons
 * an answer of its own.
 *
 * <p>Pages ask by the tags {@code against} and, in a row of a list, {@code beside}; JSON by {@link
 * club.ascham.concern.ConcernJson}. A property test holds the answer of today to the database's
 * views, and that of a past day to what was read then.
 *
 * <p>Every way out asks here: issue, session, exchange, extension and file. What blocks is refused
 * by a trigger besides, and another test tries random sequences of all that people do against a
 * model of the plain facts.
 */
package club.ascham.concern;
