/**
 * Every list of the club as a CSV file, out and in. One description per list drives both
 * directions, so that what was exported imports again unchanged; the demo club is loaded through
 * the same door.
 *
 * <p>An import holds the write gate for its rows alone: files are parsed, cells read and the forms'
 * rules asked before its turn comes ({@code Sheets}); behind the gate stands what needs the rows
 * that are there ({@code ListImport}). So many lines are taken at once that others wait a few
 * seconds on a busy machine, and never the ten that end in 503.
 */
package club.ascham.exchange;
