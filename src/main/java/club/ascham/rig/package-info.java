/**
 * Rigs: which parts are fitted to each other, and what the bow measured when it was set up. Others
 * use {@link club.ascham.rig.RigSpecs} and its {@link club.ascham.rig.RigCard}s.
 */
package club.ascham.rig;
