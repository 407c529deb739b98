package club.ascham.bow;

/**
 * What decides about fitting parts to a riser.
 *
 * @param build {@link Build#ADJUSTABLE} or {@link Build#SCREW_IN}
 * @param lengthIn the maker's designation in inches, e.g. 25
 * @param fitting the limb fitting of an adjustable riser: "ILF", or a maker's name and "own
 *     fitting"; null for a screw-in one
 * @param limbModel the model its limbs must be of, for a screw-in riser; null otherwise
 * @param maxTurnsOut the maker's allowed turns out of a limb bolt from bottomed-out; null: unknown
 * @param lateral whether the limbs can be aligned sideways at the pocket
 */
public record RiserSpec(
    Build build,
    Hand hand,
    int lengthIn,
    String fitting,
    String limbModel,
    Double maxTurnsOut,
    boolean lateral) {}
