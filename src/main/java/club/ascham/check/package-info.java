/**
 * Checking a bow that came back: the queue, the one page that takes readings and signs, the verdict
 * with its steps, the second measurement, and putting the bow back. Others read {@link
 * club.ascham.check.Checks} and {@link club.ascham.check.Queue}; what a check means is decided in
 * {@code verdict}.
 */
package club.ascham.check;
