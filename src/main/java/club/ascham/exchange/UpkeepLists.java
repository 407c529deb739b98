package club.ascham.exchange;

import static club.ascham.exchange.Codecs.account;
import static club.ascham.exchange.Codecs.item;
import static club.ascham.exchange.Codecs.length;
import static club.ascham.exchange.Codecs.number;
import static club.ascham.exchange.Codecs.text;
import static club.ascham.exchange.Codecs.whole;
import static club.ascham.exchange.Codecs.word;
import static club.ascham.exchange.Codecs.yesNo;
import static club.ascham.exchange.Column.onlyTold;
import static club.ascham.exchange.Column.optional;
import static club.ascham.exchange.Column.required;
import static club.ascham.exchange.Column.usually;
import static club.ascham.exchange.DayCodecs.moment;
import static club.ascham.exchange.RecordLists.numbered;

import club.ascham.bow.Build;
import club.ascham.bow.StringMaterial;
import club.ascham.story.Story;
import club.ascham.upkeep.Request;
import java.util.List;

/** The files of upkeep, of the club's own rules, and of the story of each thing. */
final class UpkeepLists {
  static final Codec WORK =
      word(
          "STRING_REPLACEMENT",
          "BOLT_INSPECTION",
          "RISER_INSPECTION",
          "LIMB_INSPECTION",
          "STRINGER_INSPECTION",
          "ARROW_INSPECTION");
  private static final Codec WORDS = text(4000);
  private static final Codec BRACE = length("brace height", 100, 300);

  private static final Codec TAKEN_IN_WITH =
      new Codec() {
        @Override
        public String selected(String entry) {
          return Story.TakenIn.with(entry);
        }

        @Override
        public String written(Object selected, Surroundings around) {
          return selected.toString();
        }

        @Override
        public CellReading read(String text, Surroundings around) {
          return CellReading.NOTHING;
        }
      };

  private UpkeepLists() {}

  static CsvList braceBands() {
    return CsvList.of(
            "brace-bands",
            "The club's own brace bands",
            "club_brace_band",
            required("bowLengthIn", "club_brace_band.bow_length_in", whole(40, 72)),
            required("low", "club_brace_band.low", BRACE),
            required("high", "club_brace_band.high", BRACE),
            required("source", "club_brace_band.source", WORDS))
        .asSettings();
  }

  static CsvList rules() {
    return CsvList.of(
            "upkeep-rules",
            "Upkeep rules",
            "upkeep_rule",
            numbered("upkeep_rule"),
            required(
                "itemKind",
                "upkeep_rule.item_kind",
                word("RISER", "LIMBS", "BOW", "STRING", "STRINGER", "ARROWS")),
            optional("build", "upkeep_rule.build", word(Build.class)),
            optional("material", "upkeep_rule.material", word(StringMaterial.class)),
            required("work", "upkeep_rule.work", WORK),
            optional("everyDays", "upkeep_rule.every_days", whole(1, 4000)),
            optional("everyLoans", "upkeep_rule.every_loans", whole(1, 1000)),
            optional("everyShots", "upkeep_rule.every_shots", whole(1, 1_000_000)),
            usually(14, "soonDays", "upkeep_rule.soon_days", whole(0, 365)),
            required("blocks", "upkeep_rule.blocks", yesNo()),
            optional("beyondPercent", "upkeep_rule.beyond_percent", whole(0, 400)),
            required("source", "upkeep_rule.source", WORDS))
        .asSettings();
  }

  static List<CsvList> records() {
    return List.of(
        CsvList.of(
            "upkeep-records",
            "Upkeep done",
            "upkeep_record",
            numbered("upkeep_record"),
            required("item", "upkeep_record.item_id", item()),
            required("work", "upkeep_record.work", WORK),
            required("happenedAt", "upkeep_record.happened_at", moment()),
            required("recordedAt", "upkeep_record.recorded_at", moment()),
            required("by", "upkeep_record.done_by", account()),
            required("result", "upkeep_record.result", word("PASSED", "FAILED", "REPLACED")),
            optional("found", "upkeep_record.found", WORDS),
            optional("measured", "upkeep_record.measured", WORDS),
            optional("partsUsed", "upkeep_record.parts_used", WORDS),
            optional("replacedBy", "upkeep_record.replaced_by", item())),
        CsvList.of(
            "upkeep-tasks",
            "Upkeep asked for out of turn",
            "upkeep_task",
            numbered("upkeep_task"),
            required("item", "upkeep_task.item_id", item()),
            required("work", "upkeep_task.work", WORK),
            required("openedAt", "upkeep_task.opened_at", moment()),
            required("by", "upkeep_task.opened_by", account()),
            required("why", "upkeep_task.why", WORDS),
            required("blocks", "upkeep_task.blocks", yesNo()),
            usually("ASKED", "cause", "upkeep_task.cause", word(Request.Cause.class)),
            optional(
                "closedBy",
                "upkeep_task.closed_by_record",
                number("upkeep_record", "upkeep record"))));
  }

  static List<CsvList> stories() {
    return List.of(
        CsvList.of(
            "stories",
            "The story of each thing",
            "story",
            numbered("story"),
            required("happenedAt", "story.happened_at", moment()),
            required("recordedAt", "story.recorded_at", moment()),
            optional("by", "story.account_id", account()),
            required("sentence", "story.sentence", WORDS),
            optional("why", "story.why", WORDS),
            optional("loan", "story.loan_id", number("loan", "loan")),
            onlyTold("takenInWith", "story.id", TAKEN_IN_WITH)),
        CsvList.of(
            "stories-about",
            "What each story is about",
            "story_about",
            // It has no number of its own, so the database's own count of rows serves.
            optional("number", "story_about.id", RecordLists.NUMBER),
            required("story", "story_about.story_id", number("story", "story")),
            optional("item", "story_about.item_id", item()),
            optional("rig", "story_about.rig_id", number("rig", "rig"))));
  }
}
