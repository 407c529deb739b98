package club.ascham.register;

import club.ascham.bow.Band;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.form.Words;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes an item's details as the texts that {@link ItemReader} reads the same details from. */
public final class ItemWriter {
  private static final long SIXTEENTH_INCH = 158_750;

  private final Map<String, String> texts = new LinkedHashMap<>();
  private final LengthUnit unit;

  private ItemWriter(LengthUnit unit) {
    this.unit = unit;
  }

  /** Each field with its text, in order; a field that nothing is known of is left out. */
  public static Map<String, String> write(ItemDetails details, LengthUnit unit, Currency currency) {
    ItemWriter writer = new ItemWriter(unit);
    Provenance from = details.provenance();
    if (details.kind().isKitItem()) {
      writer.put("kind", details.kind().word());
    }
    writer.put("maker", from.maker());
    writer.put("model", from.model());
    writer.put("batch", from.batch());
    writer.put("serial", from.serial());
    writer.put("boughtOn", from.boughtOn());
    writer.put("price", from.price() == null ? null : from.price().plain(currency));
    writer.write(details.particulars());
    writer.put("notes", from.notes());
    return writer.texts;
  }

  static List<String> fields(ItemKind kind) {
    List<String> fields =
        new ArrayList<>(List.of("maker", "model", "batch", "serial", "boughtOn", "price", "notes"));
    fields.addAll(
        switch (kind) {
          case RISER ->
              List.of(
                  "build",
                  "hand",
                  "lengthIn",
                  "limbFitting",
                  "limbModel",
                  "threadPitch",
                  "maxTurnsOut",
                  "lateral",
                  "massG");
          case LIMBS ->
              List.of(
                  "build",
                  "size",
                  "bowLengthIn",
                  "markedLb",
                  "markedAtIn",
                  "markedRiserIn",
                  "limbFitting",
                  "serialUpper",
                  "serialLower",
                  "hmpeTips",
                  "braceLow",
                  "braceHigh");
          case BOW ->
              List.of(
                  "hand",
                  "bowLengthIn",
                  "markedLb",
                  "markedAtIn",
                  "hmpeTips",
                  "braceLow",
                  "braceHigh",
                  "massG");
          case STRING ->
              List.of(
                  "forBowIn",
                  "measuredLength",
                  "material",
                  "strands",
                  "strandDiameter",
                  "twists",
                  "firstUsed");
          case STRINGER -> List.of("stringerKind", "bowFromIn", "bowToIn");
          default ->
              List.of(
                  "kind",
                  "hand",
                  "size",
                  "arrowLength",
                  "spine",
                  "arrowMassGr",
                  "arrowCount",
                  "pool");
        });
    return fields;
  }

  private void write(Particulars particulars) {
    if (particulars instanceof Particulars.OfRiser riser) {
      RiserSpec spec = riser.spec();
      put("build", spec.build());
      put("hand", spec.hand());
      put("lengthIn", spec.lengthIn());
      put("limbFitting", spec.fitting());
      put("limbModel", spec.limbModel());
      putMm("threadPitch", riser.threadPitch());
      put("maxTurnsOut", spec.maxTurnsOut());
      put("lateral", spec.lateral());
      put("massG", riser.massG());
    } else if (particulars instanceof Particulars.OfLimbs limbs) {
      LimbsSpec spec = limbs.spec();
      put("build", spec.build());
      put("size", spec.size());
      put("bowLengthIn", spec.bowLengthIn());
      put("markedLb", spec.markedLb());
      put("markedAtIn", spec.markedAtIn());
      put("markedRiserIn", spec.markedRiserIn());
      put("limbFitting", spec.fitting());
      put("serialUpper", limbs.serialUpper());
      put("serialLower", limbs.serialLower());
      put("hmpeTips", spec.hmpeTips());
      putBand(spec.makerBrace());
    } else if (particulars instanceof Particulars.OfBow bow) {
      OnePieceSpec spec = bow.spec();
      put("hand", spec.hand());
      put("bowLengthIn", spec.bowLengthIn());
      put("markedLb", spec.markedLb());
      put("markedAtIn", spec.markedAtIn());
      put("hmpeTips", spec.hmpeTips());
      putBand(spec.makerBrace());
      put("massG", bow.massG());
    } else if (particulars instanceof Particulars.OfString string) {
      StringSpec spec = string.spec();
      put("forBowIn", spec.forBowIn());
      put("measuredLength", spec.measured());
      put("material", spec.material());
      put("strands", spec.strands());
      putMm("strandDiameter", spec.strandDiameter());
      put("twists", spec.twists());
      put("firstUsed", string.firstUsed());
    } else if (particulars instanceof Particulars.OfStringer stringer) {
      put("stringerKind", stringer.spec().kind());
      put("bowFromIn", stringer.spec().bowFromIn());
      put("bowToIn", stringer.spec().bowToIn());
    } else if (particulars instanceof Particulars.OfKitItem kit) {
      put("hand", kit.hand());
      put("size", kit.size());
      put("arrowLength", kit.arrowLength());
      put("spine", kit.spine());
      put("arrowMassGr", kit.arrowMassGr());
      put("arrowCount", kit.arrowCount());
      if (kit.arrowLength() != null) {
        put("pool", kit.pool());
      }
    }
  }

  private void putBand(Band makerBrace) {
    if (makerBrace != null) {
      put("braceLow", makerBrace.low());
      put("braceHigh", makerBrace.high());
    }
  }

  private void putMm(String field, Length length) {
    put(field, length == null ? null : LengthText.exact(length));
  }

  private void put(String field, Object value) {
    if (value instanceof Length length) {
      texts.put(field, text(length));
    } else if (value instanceof Boolean yes) {
      texts.put(field, yes ? "yes" : "no");
    } else if (value instanceof Enum<?> word) {
      texts.put(field, Words.of(word));
    } else if (value instanceof Double number && number == Math.rint(number)) {
      texts.put(field, Long.toString(number.longValue()));
    } else if (value != null) {
      texts.put(field, value.toString());
    }
  }

  /** In inches only where that says exactly the same. */
  private String text(Length length) {
    return unit == LengthUnit.INCH && length.units() % SIXTEENTH_INCH == 0
        ? LengthText.inches(length)
        : LengthText.exact(length);
  }
}
