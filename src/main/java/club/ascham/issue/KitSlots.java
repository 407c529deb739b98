package club.ascham.issue;

import club.ascham.bow.NewcomerFit;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Against;
import club.ascham.concern.Matter;
import club.ascham.form.Option;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.loan.Archer;
import club.ascham.loan.ItemRules;
import club.ascham.loan.KitStock;
import club.ascham.loan.Lendable;
import club.ascham.loan.Offered;
import club.ascham.units.Grains;
import club.ascham.units.LengthText;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** Lays out what may go beside a bow: for each kind what hangs ready, the likeliest first. */
@ApplicationScoped
class KitSlots {
  private final KitStock stock;

  KitSlots(KitStock stock) {
    this.stock = stock;
  }

  List<IssueView.KitSlot> of(
      Typed typed, Archer archer, NewcomerFit suits, RigOffer rig, LocalDate today) {
    OptionalInt bowIn =
        rig.card().spec().map(spec -> spec.bowLengthIn()).orElse(OptionalInt.empty());
    KitSuggestion.Bow bow =
        new KitSuggestion.Bow(
            rig.card().id(),
            rig.card().level(),
            bowIn.isPresent() ? bowIn.getAsInt() : null,
            archer.weightOf(rig.card()).orElse(null));
    boolean posted = typed.has("once-key");
    Map<ItemId, Against> against = new HashMap<>();
    List<Lendable> ready = new ArrayList<>();
    for (Offered one : stock.ready(today)) {
      against.put(one.item().id(), one.against());
      ready.add(one.item());
    }
    return KitSuggestion.of(archer, suits.shortestArrow(), bow, ready).stream()
        .map(slot -> slot.withLast(item -> against.get(item.id()).speaks()))
        .map(slot -> kitSlot(typed, slot, against, bow.weight(), posted))
        .toList();
  }

  private static IssueView.KitSlot kitSlot(
      Typed typed,
      KitSuggestion.Slot slot,
      Map<ItemId, Against> against,
      WeightOnFingers weight,
      boolean posted) {
    String word = slot.kind().word();
    String field = "items." + word;
    List<Option> options = new ArrayList<>();
    slot.options().forEach(one -> options.add(new Option(one.code(), label(one))));
    Lendable first = slot.options().isEmpty() || !slot.preset() ? null : slot.options().get(0);
    String chosen = posted ? typed.value(field) : first == null ? "" : first.code();
    if (!chosen.isEmpty() && options.stream().noneMatch(one -> one.value().equals(chosen))) {
      options.add(0, new Option(chosen, chosen));
    }
    String count =
        posted ? typed.value(field + ".count") : first != null && first.pool() ? "6" : "";
    return new IssueView.KitSlot(
        field,
        Character.toUpperCase(word.charAt(0)) + word.substring(1),
        options,
        chosen,
        slot.options().stream()
            .filter(one -> one.code().equals(chosen))
            .findFirst()
            .map(one -> perPound(one, weight))
            .orElse(null),
        slot.options().stream()
            .filter(one -> one.code().equals(chosen))
            .findFirst()
            .map(one -> against.get(one.id()).without(Set.of(Matter.ARROWS_NOT_WEIGHED)))
            .orElse(Against.NOTHING),
        slot.options().stream().anyMatch(Lendable::pool),
        count);
  }

  /** What the chosen arrows are to this bow; null for anything else. */
  private static String perPound(Lendable item, WeightOnFingers weight) {
    if (!item.isArrows() || weight == null) {
      return null;
    }
    return item.against(weight)
        .map(mass -> item.code() + ": " + mass.said() + "; 5 is the least.")
        .orElseGet(() -> ItemRules.notWeighed(item.code()));
  }

  private static String label(Lendable item) {
    List<String> words = new ArrayList<>(List.of(item.code()));
    if (item.arrowLength() != null) {
      words.add(LengthText.inches(item.arrowLength()));
    }
    if (item.arrowMassGr() != null) {
      words.add(Grains.said(item.arrowMassGr()));
    }
    if (item.isArrows() && item.arrowCount() != null) {
      words.add(item.pool() ? item.left() + " left, by count" : "set of " + item.arrowCount());
    }
    if (item.size() != null) {
      words.add(item.size());
    }
    if (item.hand() != null) {
      words.add(Words.said(item.hand()));
    }
    if (item.stringer() != null) {
      words.add(item.bowFromIn() + " to " + item.bowToIn() + " in");
    }
    if (!item.name().isEmpty()) {
      words.add(item.name());
    }
    return String.join(" · ", words);
  }
}
