/**
 * After an accident: what was in somebody's hands is withdrawn and kept as it is until an officer
 * ends that, and all that the record knows of it is one document for coach and insurer. Others ask
 * {@link club.ascham.accident.Accidents} which accidents still keep what a loan lent.
 */
package club.ascham.accident;
