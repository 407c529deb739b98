/**
 * The plan of the next 24 months as a pure computation: from the fleet as it is and what is assumed
 * to inspections by week, replacements and orders by month, money with its spread, and rigs out of
 * use. Others hand in a {@link club.ascham.plan.Fleet} and {@link club.ascham.plan.Assumptions} and
 * get a {@link club.ascham.plan.Plan}; it knows java.* alone.
 */
package club.ascham.plan;
