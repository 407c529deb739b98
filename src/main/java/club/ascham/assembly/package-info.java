/**
 * Putting rigs together, changing their parts and taking them apart: what fits, what may, and what
 * goes along. A part that was found on another rig than the record says is put right by {@link
 * club.ascham.assembly.CorrectParts}.
 */
package club.ascham.assembly;
