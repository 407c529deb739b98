/**
 * After an accident: what was in somebody's hands is withdrawn and kept as it is until an officer
 * ends that, and all that the record knows of it is one document for coach and insurer. Others ask
 * {@link club.ascham.accident.Accidents} which accidents still keep what a loan lent.
 *
 * <p>What was in hand at that moment is withdrawn, and use cases and triggers refuse what would
 * change it: fittings, set-ups, adjustments, weighing, inspections, checks, decisions, more things
 * on that kit's loan, retirement, release. What was done before and is typed in late is let in.
 *
 * <p>Arrows out of a pool are noted and not withdrawn: the pool is not what was shot, and everyone
 * else's would be called back. What happened stands at the accident, for officers, and not in the
 * story, which everyone reads. While things are kept, the name of who had them is.
 */
package club.ascham.accident;
