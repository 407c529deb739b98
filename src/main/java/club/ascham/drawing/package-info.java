/**
 * What is drawn of a bow, as lines and words of a page: the bow at scale with its figures beside
 * it, its draw force, and how its readings went from check to check.
 *
 * <p>Drawn here and not in the browser, as the committee's charts are: they stand on a phone at the
 * rack, beside a verdict, where no large library should be waited for, and on paper.
 */
package club.ascham.drawing;
