/**
 * The set-up sheet: from parts to a bow that may go out, step by step, each with its target and who
 * may do it. What was measured at its end are the rig's own figures ({@link
 * club.ascham.rig.RigCard}).
 */
package club.ascham.setup;
