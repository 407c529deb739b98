package club.ascham.bow;

import club.ascham.units.Length;

/**
 * A string: the bow length it is made for and the length it measures are two different things.
 *
 * @param forBowIn the bow length in inches on its label
 * @param measured its own length loop to loop; null: not measured
 * @param strands null: not counted
 * @param twists null: not counted
 */
public record StringSpec(
    int forBowIn,
    Length measured,
    StringMaterial material,
    Integer strands,
    Length strandDiameter,
    Integer twists) {}
