package club.ascham.issue;

import club.ascham.bow.AgeBand;
import club.ascham.bow.ArrowMass;
import club.ascham.bow.Compatibility;
import club.ascham.bow.Level;
import club.ascham.bow.ShortestArrow;
import club.ascham.bow.WeightOnFingers;
import club.ascham.id.RigId;
import club.ascham.loan.Archer;
import club.ascham.loan.Lendable;
import club.ascham.register.ItemKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What should go out beside a bow: for each kind the things that would do, the best one first. */
final class KitSuggestion {
  /** What every archer of a club's kit gets, in the order in which it is handed over. */
  private static final List<ItemKind> ALWAYS =
      List.of(
          ItemKind.ARROWS,
          ItemKind.TAB,
          ItemKind.BRACER,
          ItemKind.CHESTGUARD,
          ItemKind.STRINGER,
          ItemKind.QUIVER,
          ItemKind.CASE);

  /** What a fuller rig may carry besides; suggested, but chosen by the person. */
  private static final List<ItemKind> FULLER = List.of(ItemKind.SIGHT, ItemKind.STABILISER);

  private static final List<String> SIZES =
      List.of("XS", "S", "SHORT", "M", "MEDIUM", "L", "LONG", "XL");

  /**
   * Where in {@link #SIZES} an archer of that age usually finds the size: judged, to be tried on.
   */
  private static final Map<AgeBand, Integer> USUAL_SIZE =
      Map.of(
          AgeBand.UP_TO_12, 0,
          AgeBand.FROM_13_TO_14, 1,
          AgeBand.FROM_15_TO_16, 3,
          AgeBand.FROM_17_TO_18, 3,
          AgeBand.ADULT, 3);

  /**
   * One kind of thing.
   *
   * @param options what would do, best first; empty when nothing is ready
   * @param preset whether the first is taken unless the person says otherwise
   */
  record Slot(ItemKind kind, List<Lendable> options, boolean preset) {
    /** The same with these at the end: nobody is handed them while another would do. */
    Slot withLast(Predicate<Lendable> these) {
      return new Slot(
          kind,
          Stream.concat(options.stream().filter(these.negate()), options.stream().filter(these))
              .toList(),
          preset);
    }
  }

  /**
   * The bow that the kit goes with.
   *
   * @param lengthIn null: not known, so that no stringer can be chosen
   * @param weight on the archer's fingers; null: it can't be reckoned
   */
  record Bow(RigId rig, Level level, Integer lengthIn, WeightOnFingers weight) {}

  private KitSuggestion() {}

  /**
   * The slots of a kit.
   *
   * @param stock what is ready today
   */
  static List<Slot> of(Archer archer, ShortestArrow shortest, Bow bow, List<Lendable> stock) {
    List<Slot> slots = new ArrayList<>();
    for (ItemKind kind : ALWAYS) {
      slots.add(slot(kind, true, archer, shortest, bow, stock));
    }
    if (bow.level() == Level.FULLER) {
      for (ItemKind kind : FULLER) {
        slots.add(slot(kind, false, archer, shortest, bow, stock));
      }
    }
    return List.copyOf(slots);
  }

  private static Slot slot(
      ItemKind kind,
      boolean preset,
      Archer archer,
      ShortestArrow shortest,
      Bow bow,
      List<Lendable> stock) {
    List<Lendable> options =
        stock.stream()
            .filter(item -> item.kind() == kind)
            .filter(item -> item.hand() == null || item.hand() == archer.hand())
            .filter(item -> !item.pool() || item.left() > 0)
            .filter(item -> isLongEnough(item, shortest))
            .filter(item -> item.against(bow.weight()).map(ArrowMass::isSound).orElse(true))
            .filter(item -> servesBow(item, bow.lengthIn()))
            .sorted(best(archer, bow.rig()))
            .toList();
    return new Slot(kind, options, preset);
  }

  private static boolean isLongEnough(Lendable item, ShortestArrow shortest) {
    return !item.isArrows() || (item.arrowLength() != null && shortest.allows(item.arrowLength()));
  }

  private static boolean servesBow(Lendable item, Integer bowLengthIn) {
    return item.stringer() == null
        || (bowLengthIn != null && Compatibility.misfit(item.stringer(), bowLengthIn).isEmpty());
  }

  /** What lives with the rig first, with another rig last; then by size or length; then by code. */
  private static Comparator<Lendable> best(Archer archer, RigId rig) {
    int usual = USUAL_SIZE.get(archer.age());
    return Comparator.<Lendable>comparingInt(
            item -> Objects.equals(item.keptWith(), rig) ? 0 : item.keptWith() == null ? 1 : 2)
        .thenComparingInt(item -> offSize(item, usual))
        .thenComparing(Lendable::arrowLength, Comparator.nullsLast(Comparator.naturalOrder()))
        .thenComparing(Lendable::pool)
        .thenComparingInt(KitSuggestion::reach)
        .thenComparing(Lendable::bareCode);
  }

  private static int offSize(Lendable item, int usual) {
    if (item.size() == null) {
      return SIZES.size();
    }
    int at = SIZES.indexOf(item.size().toUpperCase(Locale.ROOT));
    return at < 0 ? SIZES.size() : Math.abs(at - usual);
  }

  /**
   * How many inches of bow lengths a stringer serves: the closest made for this bow comes first.
   */
  private static int reach(Lendable item) {
    return item.stringer() == null ? 0 : item.bowToIn() - item.bowFromIn();
  }
}
