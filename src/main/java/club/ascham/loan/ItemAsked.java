package club.ascham.loan;

import club.ascham.units.ItemCode;

/**
 * An item that is to go out beside the bow.
 *
 * @param field where it was asked for
 * @param count arrows out of a pool; null: the whole item
 */
record ItemAsked(String field, ItemCode code, Integer count) {}
