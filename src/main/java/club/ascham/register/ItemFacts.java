package club.ascham.register;

import club.ascham.bow.ArrowMass;
import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Known;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerKind;
import club.ascham.form.Words;
import club.ascham.units.Grains;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.Money;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/** What is recorded of an item, as a page shows it: name and value, in the order of interest. */
final class ItemFacts {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  private final List<Fact> facts = new ArrayList<>();

  private ItemFacts() {}

  /** One of them. */
  @TemplateData
  record Fact(String name, String value) {}

  /**
   * Everything known.
   *
   * @param prices whether this reader is told what it cost
   */
  static List<Fact> of(ItemDetails details, boolean prices, Currency currency) {
    ItemFacts facts = new ItemFacts();
    facts.particulars(details.kind(), details.particulars());
    Provenance from = details.provenance();
    facts.add("Maker", from.maker());
    facts.add("Model", from.model());
    facts.add("Batch", from.batch());
    facts.add("Serial", from.serial());
    facts.add("Bought", day(from.boughtOn()));
    facts.add("Price", prices ? money(from.price(), currency) : null);
    return facts.facts;
  }

  private void particulars(ItemKind kind, Particulars particulars) {
    if (particulars instanceof Particulars.OfRiser riser) {
      riser(riser);
    } else if (particulars instanceof Particulars.OfLimbs limbs) {
      limbs(limbs);
    } else if (particulars instanceof Particulars.OfBow bow) {
      bow(bow);
    } else if (particulars instanceof Particulars.OfString string) {
      string(string);
    } else if (particulars instanceof Particulars.OfStringer stringer) {
      add("Kind", said(stringer.spec().kind()));
      add("For bows of", stringer.spec().bowFromIn() + " to " + stringer.spec().bowToIn() + " in");
    } else if (particulars instanceof Particulars.OfKitItem kit) {
      kitItem(kind, kit);
    }
  }

  private void riser(Particulars.OfRiser riser) {
    RiserSpec spec = riser.spec();
    add("Hand", Words.said(spec.hand()));
    add("Length", spec.lengthIn() + " in");
    add("Build", said(spec.build()));
    add("Limb fitting", spec.fitting());
    add("Takes limbs of the model", spec.limbModel());
    if (spec.build() == Build.ADJUSTABLE) {
      add(
          "Turns out the maker allows",
          spec.maxTurnsOut() == null ? "unknown: never turn out" : plain(spec.maxTurnsOut()));
      add("Sideways adjustment of the limbs", spec.lateral() ? "yes" : "no");
    }
    add(
        "Thread pitch of the bolts",
        riser.threadPitch() == null ? null : small(riser.threadPitch()));
    add("Mass", riser.massG() == null ? null : riser.massG() + " g");
  }

  private void limbs(Particulars.OfLimbs limbs) {
    LimbsSpec spec = limbs.spec();
    add("Marked weight", marked(spec.markedLb(), spec.markedAtIn(), spec.markedRiserIn()));
    add("Size", spec.size() == null ? null : Words.said(spec.size()));
    add("Makes a bow of", spec.bowLengthIn() == null ? null : spec.bowLengthIn() + " in");
    add("Build", said(spec.build()));
    add("Limb fitting", spec.fitting());
    add("Tips fit for HMPE strings", said(spec.hmpeTips()));
    add("Maker's brace height", band(spec.makerBrace()));
    add("Serial, upper limb", limbs.serialUpper());
    add("Serial, lower limb", limbs.serialLower());
  }

  private void bow(Particulars.OfBow bow) {
    OnePieceSpec spec = bow.spec();
    add("Hand", spec.hand() == null ? "either" : Words.said(spec.hand()));
    add("Bow length", spec.bowLengthIn() + " in");
    add("Marked weight", marked(spec.markedLb(), spec.markedAtIn(), null));
    add("Tips fit for HMPE strings", said(spec.hmpeTips()));
    add("Maker's brace height", band(spec.makerBrace()));
    add("Mass", bow.massG() == null ? null : bow.massG() + " g");
  }

  private void string(Particulars.OfString string) {
    StringSpec spec = string.spec();
    add("Made for a bow of", spec.forBowIn() + " in");
    add(
        "Measured length",
        spec.measured() == null ? "not measured" : LengthText.both(spec.measured()));
    add("Material", RegisterRow.said(spec.material()));
    add("Strands", spec.strands() == null ? "not counted" : spec.strands().toString());
    add("Strand diameter", spec.strandDiameter() == null ? null : small(spec.strandDiameter()));
    add("Twists", spec.twists() == null ? "unknown" : spec.twists().toString());
    add("First used", string.firstUsed() == null ? "not yet, or unknown" : day(string.firstUsed()));
  }

  private void kitItem(ItemKind kind, Particulars.OfKitItem kit) {
    if (kind == ItemKind.ARROWS) {
      add("Length", LengthText.both(kit.arrowLength()));
      add("Spine", kit.spine() == null ? "unknown" : kit.spine().toString());
      add(
          "Mass of an arrow",
          kit.arrowMassGr() == null ? "unknown" : Grains.both(kit.arrowMassGr()));
      add("Heaviest bow", heaviest(kit.arrowMassGr()));
      add("Arrows", kit.arrowCount().toString());
      add("Given out", kit.pool() ? "by count" : "as one set");
      return;
    }
    add("Hand", kit.hand() == null ? null : Words.said(kit.hand()));
    add("Size", kit.size());
  }

  /** Rounded down, so that the figure shown never promises too much. */
  private static String heaviest(Double massGr) {
    return massGr == null
        ? "unknown until one is weighed"
        : plain(Math.floor(ArrowMass.heaviestLb(massGr) * 10) / 10)
            + " lb on the fingers, at 5 gr to the pound";
  }

  private void add(String name, String value) {
    if (value != null) {
      facts.add(new Fact(name, value));
    }
  }

  private static String marked(double lb, double atIn, Integer riserIn) {
    String at = RegisterRow.pounds(lb) + " at " + plain(atIn) + " in";
    return riserIn == null ? at : at + " on a " + riserIn + " in riser";
  }

  private static String band(Band band) {
    return band == null
        ? "not known"
        : LengthText.both(band.low()) + " to " + LengthText.both(band.high());
  }

  static String said(Build build) {
    return switch (build) {
      case ADJUSTABLE -> "limbs slot in, bolts set the tiller";
      case SCREW_IN -> "limbs screwed on, tiller fixed";
      case ONE_PIECE -> "one piece";
    };
  }

  private static String said(StringerKind kind) {
    return switch (kind) {
      case TIP_TO_TIP -> "a cup on each tip";
      case TIP_AND_SADDLE -> "a cup and a saddle";
    };
  }

  private static String said(Known known) {
    return switch (known) {
      case YES -> "yes";
      case NO -> "no";
      case UNKNOWN -> "not known: no HMPE string";
    };
  }

  private static String small(Length length) {
    return LengthText.exact(length);
  }

  private static String day(LocalDate day) {
    return day == null ? null : DAY.format(day);
  }

  private static String money(Money price, Currency currency) {
    return price == null ? null : price.format(currency);
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? Long.toString(Math.round(number))
        : Double.toString(number);
  }
}
