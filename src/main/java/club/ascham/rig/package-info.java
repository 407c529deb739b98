/**
 * Rigs: which parts are fitted to each other, and what the bow measured when it was set up; how
 * that is shown to people and programs. Others use {@link club.ascham.rig.RigSpecs} and its {@link
 * club.ascham.rig.RigCard}s, and tell {@link club.ascham.rig.LoseParts} what is lost. Whoever
 * reads, keeps or describes what is measured takes it from {@link
 * club.ascham.measured.Measurement}.
 */
package club.ascham.rig;
