/**
 * The bow at scale with its figures beside it, and its draw force, as lines and words of a page.
 */
package club.ascham.drawing;
