package club.ascham.worksheet;

import club.ascham.bow.StringMaterial;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.units.ItemCode;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A ready string that is fitted to no rig.
 *
 * @param strands null: not counted
 * @param keptHere whether it is kept with the rig in question
 */
public record Spare(
    ItemId id,
    String bareCode,
    String maker,
    String model,
    int forBowIn,
    StringMaterial material,
    Integer strands,
    boolean keptHere) {

  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** What tells it from others: {@code Marlwick Longline, 68 in, hmpe, 16 strands}. */
  public String said() {
    return Stream.of(
            Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" ")),
            forBowIn + " in",
            material == StringMaterial.HMPE || material == StringMaterial.LCP
                ? material.name()
                : Words.said(material),
            strands == null ? "" : strands + " strands",
            keptHere ? "kept with this rig" : "")
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
