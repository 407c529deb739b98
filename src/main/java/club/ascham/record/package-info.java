/**
 * Shows the club's record entry by entry, what each changed from and to, and whether it is whole.
 * What is recorded and sealed is decided in {@code story}.
 */
package club.ascham.record;
