/**
 * Every list of the club as a CSV file, out and in. One description per list drives both
 * directions, so that what was exported imports again unchanged; the demo club is loaded through
 * the same door.
 */
package club.ascham.exchange;
