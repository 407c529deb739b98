package club.ascham.check;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.RigCard;
import club.ascham.units.ItemCode;
import java.util.Locale;
import java.util.Optional;

/**
 * A part that is on a bow and not on its list: where it belongs by the record, and who has it.
 *
 * @param rig the rig that it is fitted to by the record; null: none
 * @param rigCode the code that rig goes by
 * @param keptWith the rig that it is kept with as a spare; null: none
 * @param holder who has it on loan by the record; null: nobody
 */
public record Stranger(
    ItemId id,
    String bareCode,
    String kind,
    boolean withdrawn,
    String retiredWhy,
    RigId rig,
    String rigCode,
    RigId keptWith,
    String holder) {

  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** Where such a part goes on a bow; empty for one that is no part of it. */
  Optional<Place> place() {
    return switch (kind) {
      case "RISER", "BOW" -> Optional.of(Place.BODY);
      case "LIMBS" -> Optional.of(Place.LIMBS);
      case "STRING" -> Optional.of(Place.STRING);
      default -> Optional.empty();
    };
  }

  /** Where it belongs and who has it, in one sentence. */
  String belongs(RigId here) {
    StringBuilder said = new StringBuilder(code());
    if (retiredWhy != null) {
      said.append(" is retired: ").append(retiredWhy.toLowerCase(Locale.ROOT));
    } else if (rig != null) {
      said.append(" belongs to the rig ").append(new ItemCode(rigCode).display());
    } else if (here.equals(keptWith)) {
      said.append(" is a spare kept with this rig");
    } else if (keptWith != null) {
      said.append(" is a spare kept with another rig");
    } else {
      said.append(" is fitted to no rig and should be in the store");
    }
    if (holder != null) {
      said.append(", on loan to ").append(holder);
    }
    return said.append(withdrawn ? ". It is withdrawn." : ".").toString();
  }

  /** Of what is no part of a bow: where it is by the record, and what to do with it. */
  String asKit() {
    String what = code() + " is no part of a bow. ";
    if (holder != null) {
      return what + "It is on loan to " + holder + ": receive it with that loan.";
    }
    if (retiredWhy != null || withdrawn) {
      return what
          + (withdrawn
              ? "It is withdrawn"
              : "It is retired: " + retiredWhy.toLowerCase(Locale.ROOT))
          + ": lay it aside, nobody uses it.";
    }
    return what + "By the record it is in the store.";
  }

  /** What this bow has by the record where the stranger sits; empty: nothing. */
  Optional<Part> insteadOf(RigCard card) {
    return place()
        .flatMap(place -> card.parts().stream().filter(p -> p.place() == place).findFirst());
  }

  /** What was found, in half a sentence. */
  String found(RigCard card) {
    return code()
        + " is on it"
        + insteadOf(card).map(part -> " instead of " + part.code()).orElse("");
  }

  /** Why neither of the two is used. */
  String unclear(RigCard card) {
    return found(card) + ": find out which is which, before either is used";
  }

  /** What a person is asked about it. */
  String question(RigCard card) {
    return belongs(card.id()) + " What is to be done about it?";
  }
}
