package club.ascham.receive;

/**
 * What became of one line that was still out.
 *
 * @param line the line's number
 * @param back false: missing, and so still with the borrower
 * @param damage what is wrong with it; null: nothing seen
 * @param count arrows brought back of a pool or a counted set; null: nobody knows how many went out
 */
record LineBack(long line, boolean back, String damage, Integer count) {}
