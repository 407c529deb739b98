/**
 * What a bow's own adjustments have shown, and what of it goes along when parts move. Others ask
 * {@link club.ascham.learnt.BowRecords}; what belongs to which parts is decided by {@link
 * club.ascham.learnt.Carried}, a plain function.
 */
package club.ascham.learnt;
