package club.ascham.report;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import java.util.Locale;

/**
 * A thing of which something may be told.
 *
 * @param rig what it is, or went out, fitted to; null: it goes beside a bow
 */
public record PartChoice(ItemId item, String bareCode, String kind, RigId rig) {

  public String code() {
    return new ItemCode(bareCode).display();
  }

  public String kindWord() {
    return kind.equals("BOW") ? "one-piece bow" : kind.toLowerCase(Locale.ROOT);
  }

  public String label() {
    return kindWord() + " " + code();
  }

  /** Whether a person means it by this word: its code, or what kind of part of the bow it is. */
  boolean isMeantBy(String word) {
    return ItemCode.parse(word) instanceof CodeParse.OfItem found
            && found.item().bare().equals(bareCode)
        || word.equalsIgnoreCase(kind)
        || word.equalsIgnoreCase("riser") && kind.equals("BOW")
        || word.equalsIgnoreCase("limbs") && kind.equals("BOW");
  }
}
