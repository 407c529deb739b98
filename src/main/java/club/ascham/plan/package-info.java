/**
 * The plan of the next 24 months as a pure computation: from the fleet as it is and what is assumed
 * to inspections by week, replacements and orders by month, money with its spread, and rigs out of
 * use. Others hand in a {@link club.ascham.plan.PlannedFleet} and {@link
 * club.ascham.plan.Assumptions} and get a {@link club.ascham.plan.Plan}; it knows java.* alone.
 *
 * <p>{@link club.ascham.plan.Numbers} lays a fleet out as arrays under some assumptions, {@link
 * club.ascham.plan.Replication} goes through the weeks once by a {@link club.ascham.plan.Chance} of
 * its own, {@link club.ascham.plan.Tallies} count, and {@link club.ascham.plan.Simulation} shares
 * the replications between threads. A what-if is the same function with other assumptions and the
 * same seed; the list of work is the course in which nothing fails, by the same code.
 *
 * <p>Assumed and not modelled: a stopped limb breaks nothing else, a spare wears like a new part,
 * and loans of a further course fall evenly on all rigs.
 */
package club.ascham.plan;
