package club.ascham.register;

import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerSpec;
import club.ascham.bow.Style;
import club.ascham.id.ItemId;
import java.util.LinkedHashMap;
import java.util.Map;

/** What some parts are, by id, as the trade's rules look at them. */
public record Parts(
    Map<ItemId, RiserSpec> risers,
    Map<ItemId, LimbsSpec> limbs,
    Map<ItemId, OnePieceSpec> bows,
    Map<ItemId, StringSpec> strings,
    Map<ItemId, StringerSpec> stringers) {

  /** These parts, one of them being something else. */
  Parts with(ItemId id, Particulars changed) {
    if (changed instanceof Particulars.OfRiser riser) {
      return new Parts(put(risers, id, riser.spec()), limbs, bows, strings, stringers);
    }
    if (changed instanceof Particulars.OfLimbs pair) {
      return new Parts(risers, put(limbs, id, pair.spec()), bows, strings, stringers);
    }
    if (changed instanceof Particulars.OfBow bow) {
      return new Parts(risers, limbs, put(bows, id, bow.spec()), strings, stringers);
    }
    if (changed instanceof Particulars.OfString string) {
      return new Parts(risers, limbs, bows, put(strings, id, string.spec()), stringers);
    }
    return this;
  }

  private static <S> Map<ItemId, S> put(Map<ItemId, S> specs, ItemId id, S changed) {
    Map<ItemId, S> with = new LinkedHashMap<>(specs);
    with.put(id, changed);
    return with;
  }

  /**
   * The rig that these parts make.
   *
   * @param body a riser or a one-piece bow
   * @param limbsFitted null: none, as with a one-piece bow
   * @param string null: none fitted
   */
  public RigSpec rig(ItemId body, ItemId limbsFitted, ItemId string, Style style) {
    return new RigSpec(
        risers.get(body),
        limbsFitted == null ? null : limbs.get(limbsFitted),
        bows.get(body),
        string == null ? null : strings.get(string),
        style);
  }
}
