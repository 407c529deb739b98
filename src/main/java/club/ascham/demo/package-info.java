/**
 * The invented club that a new user meets: its files, moved in time so that it is always now.
 *
 * <p>Its register begins 738 days before the day on which it is loaded; its string book goes back
 * five years, as if it had been typed in last evening, so that the lives of strings and the
 * proposal follow from it.
 */
package club.ascham.demo;
