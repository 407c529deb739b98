package club.ascham.bow;

/**
 * A rig that an archer might be given.
 *
 * @param rig whatever the caller knows it by
 * @param setUp null: not set up yet, as with parts that could be assembled
 */
public record Candidate<T>(T rig, RigSpec spec, SetUpFigures setUp) {}
