/**
 * What people tell of a bow: facts that stay open, and stand against it, until a person answers
 * them at a check or an inspection. Others read what is open through {@link
 * club.ascham.concern.Concerns}.
 */
package club.ascham.report;
