package club.ascham.exchange;

import java.util.Currency;

/**
 * What a cell is read and written by, beside itself.
 *
 * @param currency that prices and deposits are in
 * @param shiftDays how many days later every date of the file is taken to be; 0 for a club's own
 *     files
 */
record Surroundings(Currency currency, long shiftDays) {}
