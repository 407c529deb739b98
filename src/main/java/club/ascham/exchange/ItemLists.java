package club.ascham.exchange;

import static club.ascham.exchange.Column.optional;
import static club.ascham.exchange.Column.required;
import static club.ascham.exchange.DayCodecs.day;

import club.ascham.register.ItemField;
import club.ascham.register.ItemFields;
import club.ascham.register.ItemKind;
import club.ascham.register.Values;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The files of what the club owns: a column for each field of {@link ItemFields}. */
final class ItemLists {
  private ItemLists() {}

  static List<CsvList> all() {
    return List.of(
        items("Risers", ItemKind.RISER),
        items("Limbs", ItemKind.LIMBS),
        items("One-piece bows", ItemKind.BOW),
        items("Strings", ItemKind.STRING),
        items("Stringers", ItemKind.STRINGER),
        kitItems());
  }

  private static CsvList items(String title, ItemKind kind) {
    return CsvList.ofItems(
        kind.slug(),
        title,
        table(kind.slug()),
        Map.of("item.kind", kind.name()),
        columns(kind.slug()));
  }

  /** The one list of items of several kinds, so the kind has a column. */
  private static CsvList kitItems() {
    String list = ItemKind.ARROWS.slug();
    String[] kinds =
        Arrays.stream(ItemKind.values())
            .filter(ItemKind::isKitItem)
            .map(Enum::name)
            .toArray(String[]::new);
    List<Column> columns = columns(list);
    columns.add(1, required("kind", "item.kind", Codecs.word(kinds)));
    return CsvList.ofItems(list, "Smaller things of a kit", table(list), Map.of(), columns);
  }

  private static String table(String list) {
    return ItemFields.own(list).get(0).table();
  }

  private static List<Column> columns(String list) {
    List<Column> columns = new ArrayList<>();
    // Left empty, the next code is given.
    columns.add(optional("code", "item.code", Codecs.code()));
    ItemFields.ofAll().forEach(field -> columns.add(column(field)));
    ItemFields.own(list).forEach(field -> columns.add(column(field)));
    // Left empty, it is today.
    columns.add(optional("registeredOn", "item.registered_on", day()));
    columns.add(optional("retiredOn", "item.retired_on", day()));
    columns.add(
        optional("retiredWhy", "item.retired_why", Codecs.word("SCRAPPED", "SOLD", "LOST")));
    columns.add(optional("retiredNote", "item.retired_note", Codecs.text(2000)));
    return columns;
  }

  private static Column column(ItemField<?> field) {
    Codec codec = codec(field.values());
    if (field.missing() != null) {
      return required(field.name(), field.place(), codec);
    }
    return field.otherwise() == null
        ? optional(field.name(), field.place(), codec)
        : Column.usually(kept(field.otherwise()), field.name(), field.place(), codec);
  }

  private static Object kept(Object usual) {
    if (usual instanceof Boolean yes) {
      return yes ? 1 : 0;
    }
    return usual instanceof Enum<?> word ? word.name() : usual;
  }

  private static Codec codec(Values<?> values) {
    if (values instanceof Values.Line line) {
      return Codecs.text(line.longest());
    }
    if (values instanceof Values.Prose prose) {
      return Codecs.text(prose.longest());
    }
    if (values instanceof Values.Word<?> word) {
      return Codecs.word(word.type());
    }
    if (values instanceof Values.Whole whole) {
      return Codecs.whole(whole.low(), whole.high());
    }
    if (values instanceof Values.Decimal number) {
      return Codecs.decimal(number.low(), number.high());
    }
    if (values instanceof Values.ArrowGrains grains) {
      return Codecs.decimal(grains.low(), grains.high());
    }
    if (values instanceof Values.Distance distance) {
      return Codecs.length(distance.plausible());
    }
    if (values instanceof Values.PastDay) {
      return day();
    }
    return values instanceof Values.Price ? Codecs.money() : Codecs.yesNo();
  }
}
