package club.ascham.register;

import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerSpec;
import club.ascham.bow.Style;
import club.ascham.id.ItemId;
import java.util.Map;

/** What some parts are, by id, as the trade's rules look at them. */
public record Parts(
    Map<ItemId, RiserSpec> risers,
    Map<ItemId, LimbsSpec> limbs,
    Map<ItemId, OnePieceSpec> bows,
    Map<ItemId, StringSpec> strings,
    Map<ItemId, StringerSpec> stringers) {

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
