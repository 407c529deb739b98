package club.ascham.assembly;

import club.ascham.bow.AgainstAdvice;
import club.ascham.form.Typed;
import club.ascham.rig.AdviceOverridden;
import club.ascham.rig.Place;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The parts that a rig is to have afterwards.
 *
 * @param parts the code for each place that is to have a part
 * @param on the day it was done; null: now
 * @param version of the rig that the wish was made from; empty: whatever it is now
 * @param given why a bow that is out is changed although advice speaks against it
 * @param confirmed whether it was said that a bow on loan is meant
 */
record PartsWish(
    Map<Place, ItemCode> parts,
    LocalDate on,
    OptionalInt version,
    AgainstAdvice given,
    boolean confirmed) {
  /** The name of the answer that a bow on loan is to be changed all the same. */
  static final String CONFIRMED = "confirmed";

  /** Ask {@code typed.sound()} before using it. */
  static PartsWish parse(Typed typed, LocalDate today) {
    return new PartsWish(
        Assembly.parts(typed),
        ChangeMoment.read(typed, today),
        typed.version(),
        AdviceOverridden.parse(typed),
        typed.ticked(CONFIRMED));
  }
}
