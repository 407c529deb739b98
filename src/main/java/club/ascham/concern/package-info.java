/**
 * What stands against a bow: derived from facts at any date and never stored. Whatever shows or
 * judges a thing asks {@link club.ascham.concern.Concerns} and shows the same line; nobody reckons
 * an answer of its own.
 */
package club.ascham.concern;
