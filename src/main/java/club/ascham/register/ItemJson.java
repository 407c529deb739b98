package club.ascham.register;

import club.ascham.bow.ArrowMass;
import club.ascham.bow.Band;
import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Words;
import club.ascham.standing.State;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The items in JSON, under the names that forms and files use too; what is unknown is left out. */
final class ItemJson {
  private ItemJson() {}

  /** One page of a list. */
  record Listed<J>(List<J> items, int page, int size, long total) {}

  /** An item that was found again, and what stands against it now. */
  record FoundJson<J>(@JsonUnwrapped J item, List<FoundAgain.Stands> standsAgainst) {}

  /** What every item has. A price is shown to officers and the committee. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Common(
      @Schema(readOnly = true, examples = "R-0101-E") String code,
      @Schema(description = "of kit items; elsewhere the address says it", examples = "tab")
          String kind,
      @Schema(readOnly = true, examples = "ready") String state,
      @Schema(description = "sent back with a change", examples = "0") int version,
      String maker,
      String model,
      String batch,
      String serial,
      LocalDate boughtOn,
      @Schema(description = "in the club's currency", examples = "139.00") String price,
      String notes,
      @Schema(readOnly = true) LocalDate registeredOn,
      @Schema(readOnly = true) LocalDate retiredOn,
      @Schema(readOnly = true, examples = "sold") String retiredWhy,
      @Schema(readOnly = true) String retiredNote,
      @Schema(readOnly = true, description = "what stands against it, the heaviest first")
          List<ConcernJson> concerns) {

    static Common of(
        Registered item, State state, Against against, boolean prices, Currency currency) {
      Provenance from = item.details().provenance();
      Retirement retired = item.retirement();
      return new Common(
          item.code().display(),
          item.kind().word(),
          state.word(),
          item.version(),
          from.maker(),
          from.model(),
          from.batch(),
          from.serial(),
          from.boughtOn(),
          prices && from.price() != null ? from.price().plain(currency) : null,
          from.notes(),
          item.registeredOn(),
          retired == null ? null : retired.on(),
          retired == null ? null : retired.why().word(),
          retired == null ? null : retired.note(),
          ConcernJson.of(against));
    }
  }

  /** A riser. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record RiserJson(
      @JsonUnwrapped Common common,
      @Schema(examples = "adjustable", description = "adjustable or screw-in") String build,
      @Schema(examples = "right", description = "the hand that draws the string") String hand,
      @Schema(examples = "25") int lengthIn,
      @Schema(
              examples = "ILF",
              description = "of an adjustable riser: ILF, or a maker's name and 'own fitting'")
          String limbFitting,
      @Schema(description = "of a screw-in riser") String limbModel,
      @Schema(examples = "1.25 mm") String threadPitch,
      @Schema(description = "of a limb bolt, from bottomed-out, as the maker allows")
          Double maxTurnsOut,
      boolean lateral,
      Integer massG) {
    static RiserJson of(Common common, Registered item) {
      Particulars.OfRiser riser = (Particulars.OfRiser) item.details().particulars();
      return new RiserJson(
          common,
          word(riser.spec().build()),
          word(riser.spec().hand()),
          riser.spec().lengthIn(),
          riser.spec().fitting(),
          riser.spec().limbModel(),
          text(riser.threadPitch()),
          riser.spec().maxTurnsOut(),
          riser.spec().lateral(),
          riser.massG());
    }
  }

  /** A pair of limbs. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record LimbsJson(
      @JsonUnwrapped Common common,
      @Schema(examples = "adjustable", description = "adjustable or screw-in") String build,
      @Schema(examples = "medium", description = "short, medium or long; or a bow length")
          String size,
      @Schema(description = "where no size is marked") Integer bowLengthIn,
      @Schema(examples = "22") double markedLb,
      @Schema(examples = "28", description = "AMO draw in inches; 28 where left out")
          double markedAtIn,
      @Schema(examples = "25") Integer markedRiserIn,
      @Schema(examples = "ILF", description = "ILF, or a maker's name and 'own fitting'")
          String limbFitting,
      String serialUpper,
      String serialLower,
      @Schema(examples = "unknown", description = "yes, no or unknown") String hmpeTips,
      @Schema(examples = "210 mm") String braceLow,
      @Schema(examples = "228.6 mm") String braceHigh) {
    static LimbsJson of(Common common, Registered item) {
      Particulars.OfLimbs limbs = (Particulars.OfLimbs) item.details().particulars();
      Band brace = limbs.spec().makerBrace();
      return new LimbsJson(
          common,
          word(limbs.spec().build()),
          word(limbs.spec().size()),
          limbs.spec().bowLengthIn(),
          limbs.spec().markedLb(),
          limbs.spec().markedAtIn(),
          limbs.spec().markedRiserIn(),
          limbs.spec().fitting(),
          limbs.serialUpper(),
          limbs.serialLower(),
          word(limbs.spec().hmpeTips()),
          brace == null ? null : text(brace.low()),
          brace == null ? null : text(brace.high()));
    }
  }

  /** A one-piece bow. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record BowJson(
      @JsonUnwrapped Common common,
      @Schema(description = "right or left; left out: either") String hand,
      @Schema(examples = "54") int bowLengthIn,
      @Schema(examples = "12") double markedLb,
      @Schema(examples = "24", description = "AMO draw in inches; 28 where left out")
          double markedAtIn,
      @Schema(examples = "no") String hmpeTips,
      String braceLow,
      String braceHigh,
      Integer massG) {
    static BowJson of(Common common, Registered item) {
      Particulars.OfBow bow = (Particulars.OfBow) item.details().particulars();
      Band brace = bow.spec().makerBrace();
      return new BowJson(
          common,
          word(bow.spec().hand()),
          bow.spec().bowLengthIn(),
          bow.spec().markedLb(),
          bow.spec().markedAtIn(),
          word(bow.spec().hmpeTips()),
          brace == null ? null : text(brace.low()),
          brace == null ? null : text(brace.high()),
          bow.massG());
    }
  }

  /** A string. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record StringJson(
      @JsonUnwrapped Common common,
      @Schema(examples = "68", description = "the bow length on its label") int forBowIn,
      @Schema(examples = "1647 mm", description = "its own length, loop to loop")
          String measuredLength,
      @Schema(examples = "polyester", description = "polyester, hmpe, lcp or other")
          String material,
      @Schema(examples = "16") Integer strands,
      @Schema(examples = "0.45 mm") String strandDiameter,
      Integer twists,
      LocalDate firstUsed) {
    static StringJson of(Common common, Registered item) {
      Particulars.OfString string = (Particulars.OfString) item.details().particulars();
      return new StringJson(
          common,
          string.spec().forBowIn(),
          text(string.spec().measured()),
          word(string.spec().material()),
          string.spec().strands(),
          text(string.spec().strandDiameter()),
          string.spec().twists(),
          string.firstUsed());
    }
  }

  /** A stringer. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record StringerJson(
      @JsonUnwrapped Common common,
      @Schema(examples = "tip-to-tip", description = "tip-to-tip or tip-and-saddle")
          String stringerKind,
      @Schema(examples = "60") int bowFromIn,
      @Schema(examples = "70") int bowToIn) {
    static StringerJson of(Common common, Registered item) {
      Particulars.OfStringer stringer = (Particulars.OfStringer) item.details().particulars();
      return new StringerJson(
          common,
          word(stringer.spec().kind()),
          stringer.spec().bowFromIn(),
          stringer.spec().bowToIn());
    }
  }

  /** One of the smaller things of a kit. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record KitItemJson(
      @JsonUnwrapped Common common,
      @Schema(description = "right or left; left out: either") String hand,
      @Schema(examples = "M") String size,
      @Schema(description = "of arrows", examples = "660.4 mm") String arrowLength,
      @Schema(description = "of arrows") Integer spine,
      @Schema(description = "of one whole arrow in grains, the lightest of them", examples = "312")
          Double arrowMassGr,
      @Schema(
              readOnly = true,
              description = "the heaviest weight on the fingers that arrows of this mass are for")
          Double soundUpToLb,
      @Schema(description = "of arrows") Integer arrowCount,
      @Schema(description = "of arrows: given out by count") Boolean pool) {
    static KitItemJson of(Common common, Registered item) {
      Particulars.OfKitItem kit = (Particulars.OfKitItem) item.details().particulars();
      return new KitItemJson(
          common,
          word(kit.hand()),
          kit.size(),
          text(kit.arrowLength()),
          kit.spine(),
          kit.arrowMassGr(),
          kit.arrowMassGr() == null ? null : ArrowMass.heaviestLb(kit.arrowMassGr()),
          kit.arrowCount(),
          item.kind() == ItemKind.ARROWS ? kit.pool() : null);
    }
  }

  private static String word(Enum<?> word) {
    return word == null ? null : Words.of(word);
  }

  private static String text(Length length) {
    return length == null ? null : LengthText.exact(length);
  }
}
