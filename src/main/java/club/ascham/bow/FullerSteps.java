package club.ascham.bow;

import static club.ascham.bow.Who.COACH;
import static club.ascham.bow.Who.VOLUNTEER;

import club.ascham.bow.SetUpStep.Key;
import java.util.List;

/** The steps of the set-up sheet that come after a beginner's bow is finished. */
final class FullerSteps {
  private FullerSteps() {}

  static List<SetUpStep> all() {
    return List.of(
        new SetUpStep(
            Key.SIGHT,
            "Sight",
            "Screw the sight to the side of the riser away from the arrow. From behind, bring the"
                + " string over the middle of both limbs and set the pin on the string's line.",
            "Bar upright, pin in line with string and arrow",
            "Fine setting is done by shooting",
            "A bar that leans moves the arrows sideways with every change of distance. Common"
                + " practice.",
            VOLUNTEER,
            null,
            null),
        new SetUpStep(
            Key.STABILISERS,
            "Stabilisers",
            "Screw the long rod into the front bush, hand-tight; then side rods, if any. Check each"
                + " joint.",
            "Every joint hand-tight, nothing rattles",
            "A rod that turns by itself is tightened again",
            "A rod that works loose spoils the balance and the bush's thread. Common practice.",
            VOLUNTEER,
            null,
            "Enough for the archer to hold steadily, and not more: a heavy bow hurts shoulders."),
        new SetUpStep(
            Key.BALANCE_SIDE_TO_SIDE,
            "Balance: side to side",
            "The archer holds the bow out by a loose grip without drawing. Watch whether it leans."
                + " Move a weight or a side rod to the light side.",
            "The bow hangs upright",
            "No lean that the archer has to hold against",
            "Sight and button weigh on one side only. Common practice.",
            COACH,
            null,
            null),
        new SetUpStep(
            Key.BALANCE_UP_AND_DOWN,
            "Balance: up and down",
            "Support the bow at the throat of the grip on one finger. Move weight up or down the"
                + " riser.",
            "Neither tip drops quickly",
            "As the archer likes it",
            "A bow heavy at one end turns in the hand after the loose. Common practice.",
            COACH,
            null,
            null),
        new SetUpStep(
            Key.BALANCE_FORE_AND_AFT,
            "Balance: fore and aft",
            "Watch some arrows shot. Put weight at the end of the long rod, or take some off.",
            "After the loose the bow rolls forward, slowly",
            "As the archer likes it",
            "A bow that falls back was pushed; one that dives pulls the bow arm down. Common"
                + " practice.",
            COACH,
            null,
            "Only on the range, under its rules."),
        new SetUpStep(
            Key.CLICKER,
            "Clicker",
            "Not for a beginner: months later, when the archer's draw has settled, and with the"
                + " coach. The coach watches several ends, marks where the point comes to at full"
                + " draw, and sets the blade there.",
            "The blade drops at this archer's own full draw",
            "The point never comes behind the rest",
            "Set early, it teaches a draw length that is not the archer's own. Common practice.",
            COACH,
            null,
            "The point stays at least 1 in in front of the middle of the rest's mounting hole ("
                + InPrint.MAKER_MANUAL
                + "): else longer arrows."));
  }
}
