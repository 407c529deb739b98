package club.ascham.exchange;

import static club.ascham.exchange.Codecs.account;
import static club.ascham.exchange.Codecs.decimal;
import static club.ascham.exchange.Codecs.item;
import static club.ascham.exchange.Codecs.length;
import static club.ascham.exchange.Codecs.line;
import static club.ascham.exchange.Codecs.money;
import static club.ascham.exchange.Codecs.number;
import static club.ascham.exchange.Codecs.text;
import static club.ascham.exchange.Codecs.whole;
import static club.ascham.exchange.Codecs.word;
import static club.ascham.exchange.Codecs.yesNo;
import static club.ascham.exchange.Column.measured;
import static club.ascham.exchange.Column.optional;
import static club.ascham.exchange.Column.required;
import static club.ascham.exchange.Column.usually;
import static club.ascham.exchange.DayCodecs.day;
import static club.ascham.exchange.DayCodecs.moment;
import static club.ascham.measured.Measurement.BRACE;
import static club.ascham.measured.Measurement.LOWER_IN;
import static club.ascham.measured.Measurement.NOCKING;
import static club.ascham.measured.Measurement.TILLER_LOWER;
import static club.ascham.measured.Measurement.TILLER_UPPER;
import static club.ascham.measured.Measurement.TURNS_LOWER;
import static club.ascham.measured.Measurement.TURNS_UPPER;
import static club.ascham.measured.Measurement.TWISTS;
import static club.ascham.measured.Measurement.TWISTS_ADDED;
import static club.ascham.measured.Measurement.UPPER_IN;

import club.ascham.bow.Hand;
import club.ascham.bow.Style;
import club.ascham.bow.Who;
import club.ascham.report.Noticed;
import club.ascham.undo.MoveKind;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Saying;
import java.util.List;

/** The files of rigs, of lending and of checking: what happened, each row with its number. */
final class RecordLists {
  private static final Codec WORDS = text(4000);

  /** As many digits as an address takes; {@link ListImport} says how far a new one may reach. */
  static final Codec NUMBER = whole(1, 999_999_999_999L);

  private static final Codec AGE_BAND =
      word("UP_TO_12", "FROM_13_TO_14", "FROM_15_TO_16", "FROM_17_TO_18", "ADULT");
  private static final Codec DRAW_LENGTH = length("draw length", 350, 920);
  private static final Codec RIG = number("rig", "rig");
  private static final Codec LOAN = number("loan", "loan");
  private static final Codec CHECK = number("bow_check", "check");

  private RecordLists() {}

  static List<CsvList> ofRigs() {
    return List.of(
        CsvList.of(
            "rigs",
            "Rigs",
            "rig",
            numbered("rig"),
            required("style", "rig.style", word(Style.class)),
            required("level", "rig.level", word("BEGINNER", "FULLER")),
            required("assembledAt", "rig.assembled_at", moment()),
            optional("dissolvedAt", "rig.dissolved_at", moment())),
        CsvList.of(
            "fittings",
            "What was fitted to what",
            "fitting",
            numbered("fitting"),
            required("rig", "fitting.rig_id", RIG),
            required("item", "fitting.item_id", item()),
            required("place", "fitting.place", word("BODY", "LIMBS", "STRING")),
            required("fromAt", "fitting.from_at", moment()),
            optional("untilAt", "fitting.until_at", moment())),
        CsvList.of(
            "kept-with",
            "What is kept with a rig",
            "kept_with",
            required("item", "kept_with.item_id", item()),
            required("rig", "kept_with.rig_id", RIG)),
        CsvList.of(
                "set-ups",
                "Set-ups",
                "set_up",
                numbered("set_up"),
                required("rig", "set_up.rig_id", RIG),
                required("begunAt", "set_up.begun_at", moment()),
                required("begunBy", "set_up.begun_by", account()),
                optional("finishedAt", "set_up.finished_at", moment()),
                optional("finishedBy", "set_up.finished_by", account()),
                usually("", "stepsDone", "set_up.steps_done", WORDS))
            .and(measured("set_up", BRACE, TILLER_UPPER, TILLER_LOWER, NOCKING))
            .and(List.of(usually(0, "screwsSeen", "set_up.screws_seen", yesNo())))
            .and(measured("set_up", TURNS_UPPER, TURNS_LOWER, TWISTS)));
  }

  static List<CsvList> ofLending() {
    return List.of(
        CsvList.of(
            "borrowers",
            "Borrowers",
            "borrower",
            numbered("borrower"),
            required("name", "borrower.name", line(120)),
            required("contact", "borrower.contact", line(200)),
            optional("memberNo", "borrower.member_no", line(40)),
            required("ageBand", "borrower.age_band", AGE_BAND),
            optional("guardian", "borrower.guardian", line(200))),
        CsvList.of(
            "loans",
            "Loans and sessions",
            "loan",
            numbered("loan"),
            required("kind", "loan.kind", word("KIT", "SESSION")),
            optional("borrower", "loan.borrower_id", number("borrower", "borrower")),
            optional("leader", "loan.leader", line(120)),
            required("issuedAt", "loan.issued_at", moment()),
            required("dueOn", "loan.due_on", day()),
            required("by", "loan.issued_by", account()),
            required("recordedAt", "loan.recorded_at", moment()),
            optional("hand", "loan.hand", word(Hand.class)),
            optional("drawLength", "loan.draw_length", DRAW_LENGTH),
            usually(0, "drawEstimated", "loan.draw_estimated", yesNo()),
            optional("experience", "loan.experience", word("BEGINNER", "IMPROVER", "EXPERIENCED")),
            optional("overrideWhy", "loan.override_why", WORDS),
            usually(0, "deposit", "loan.deposit_minor", money()),
            optional("depositHow", "loan.deposit_how", word("CASH", "CARD", "TRANSFER", "OTHER")),
            optional("depositBack", "loan.deposit_back_minor", money()),
            optional("depositKeptWhy", "loan.deposit_kept_why", WORDS),
            usually(0, "termsAccepted", "loan.terms_accepted", yesNo()),
            optional("overrideCoach", "loan.override_coach", line(80)),
            optional("briefedAt", "loan.briefed_at", moment()),
            optional("briefedBy", "loan.briefed_by", account())),
        CsvList.of(
            "receipts",
            "Receipts",
            "receipt",
            numbered("receipt"),
            required("loan", "receipt.loan_id", LOAN),
            required("happenedAt", "receipt.happened_at", moment()),
            required("recordedAt", "receipt.recorded_at", moment()),
            required("by", "receipt.received_by", account()),
            usually(0, "dryLooseOrFall", "receipt.dry_loose_or_fall", yesNo()),
            usually(0, "cameBackStrung", "receipt.came_back_strung", yesNo()),
            optional("words", "receipt.words", WORDS)),
        CsvList.of(
            "loan-lines",
            "Lines of loans",
            "loan_line",
            numbered("loan_line"),
            required("loan", "loan_line.loan_id", LOAN),
            required("item", "loan_line.item_id", item()),
            optional("rig", "loan_line.rig_id", RIG),
            required("outAt", "loan_line.out_at", moment()),
            optional("arrowCount", "loan_line.arrow_count", whole(1, 2000)),
            optional("backAt", "loan_line.back_at", moment()),
            optional("receipt", "loan_line.receipt_id", number("receipt", "receipt")),
            optional("outcome", "loan_line.outcome", word("BACK", "DAMAGED", "LOST", "CHANGED")),
            optional("backCount", "loan_line.back_count", whole(0, 2000)),
            optional("shots", "loan_line.shots", whole(0, 1_000_000)),
            optional("missingCount", "loan_line.missing_count", whole(0, 2000))),
        CsvList.of(
            "session-archers",
            "Archers of sessions, without names",
            "session_archer",
            numbered("session_archer"),
            required("loan", "session_archer.loan_id", LOAN),
            required("rig", "session_archer.rig_id", RIG),
            required("drawLength", "session_archer.draw_length", DRAW_LENGTH),
            optional("arrows", "session_archer.arrows_id", item()),
            optional("ageBand", "session_archer.age_band", AGE_BAND),
            optional("overrideWhy", "session_archer.override_why", WORDS),
            optional("overrideCoach", "session_archer.override_coach", line(80))));
  }

  static List<CsvList> ofChecking() {
    return List.of(
        CsvList.of(
                "checks",
                "Checks and looks",
                "bow_check",
                numbered("bow_check"),
                required("rig", "bow_check.rig_id", RIG),
                required("kind", "bow_check.kind", word("CHECK", "LOOK")),
                required("happenedAt", "bow_check.happened_at", moment()),
                required("recordedAt", "bow_check.recorded_at", moment()),
                required("by", "bow_check.checked_by", account()),
                optional("setUp", "bow_check.set_up_id", number("set_up", "set-up")),
                required("allAsListed", "bow_check.all_as_listed", yesNo()))
            .and(measured("bow_check", BRACE, TILLER_UPPER, TILLER_LOWER))
            .and(
                List.of(
                    usually(0, "dryLooseOrFall", "bow_check.dry_loose_or_fall", yesNo()),
                    usually(0, "cameBackStrung", "bow_check.came_back_strung", yesNo()),
                    required("verdict", "bow_check.verdict", word("FIT", "ADJUST", "WITHDRAW")),
                    optional("corrects", "bow_check.corrects_id", CHECK),
                    optional("correctionWhy", "bow_check.correction_why", WORDS),
                    optional("releasedAt", "bow_check.released_at", moment()),
                    optional("releasedBy", "bow_check.released_by", account()))),
        CsvList.of(
            "check-signs",
            "Signs seen on checks",
            "check_sign",
            numbered("check_sign"),
            required("check", "check_sign.check_id", CHECK),
            required("part", "check_sign.part", word("STRING", "LIMBS", "BOLTS", "RISER", "REST")),
            required("gravity", "check_sign.gravity", word("FINE", "NOTE", "STOP")),
            required("words", "check_sign.words", WORDS)),
        CsvList.of(
            "verdict-lines",
            "What the verdicts of checks say",
            "verdict_line",
            numbered("verdict_line"),
            required("check", "verdict_line.check_id", CHECK),
            required("place", "verdict_line.place", whole(1, 1000)),
            required(
                "kind",
                "verdict_line.kind",
                word("REASON", "STEP", "EXPECTED", "WORK", "NOTE", "BASIS")),
            required("saying", "verdict_line.saying", word(Saying.class)),
            required("saidOf", "verdict_line.said_of", text(12_000)),
            optional("step", "verdict_line.step", word(BenchStep.Key.class)),
            optional("byWhom", "verdict_line.by_whom", word(Who.class)),
            optional("thousandths", "verdict_line.thousandths", whole(-150_000, 150_000))),
        CsvList.of(
                "adjustments",
                "Adjustments",
                "adjustment",
                numbered("adjustment"),
                required("rig", "adjustment.rig_id", RIG),
                optional("check", "adjustment.check_id", CHECK),
                optional("after", "adjustment.after_id", CHECK),
                required("happenedAt", "adjustment.happened_at", moment()),
                required("recordedAt", "adjustment.recorded_at", moment()),
                required("by", "adjustment.done_by", account()))
            .and(measured("adjustment", TWISTS_ADDED, UPPER_IN, LOWER_IN))
            .and(List.of(optional("words", "adjustment.words", WORDS))),
        CsvList.of(
            "scale-readings",
            "Readings of the bow scale",
            "scale_reading",
            numbered("scale_reading"),
            required("rig", "scale_reading.rig_id", RIG),
            required("item", "scale_reading.item_id", item()),
            required("happenedAt", "scale_reading.happened_at", moment()),
            required("recordedAt", "scale_reading.recorded_at", moment()),
            required("by", "scale_reading.weighed_by", account()),
            optional("riserIn", "scale_reading.riser_in", whole(10, 35)),
            required("drawIn", "scale_reading.draw_in", decimal(14, 36)),
            required("forceLb", "scale_reading.force_lb", decimal(2, 100))),
        CsvList.of(
            "withdrawals",
            "Withdrawals",
            "withdrawal",
            numbered("withdrawal"),
            required("item", "withdrawal.item_id", item()),
            required("happenedAt", "withdrawal.happened_at", moment()),
            required("recordedAt", "withdrawal.recorded_at", moment()),
            required("by", "withdrawal.withdrawn_by", account()),
            required("why", "withdrawal.why", WORDS),
            optional("work", "withdrawal.work", UpkeepLists.WORK),
            optional("check", "withdrawal.check_id", CHECK),
            optional("releasedAt", "withdrawal.released_at", moment()),
            optional("releasedBy", "withdrawal.released_by", account()),
            optional("releaseWhy", "withdrawal.release_why", WORDS),
            optional("lookedAt", "withdrawal.looked_at", WORDS),
            optional("lookedBy", "withdrawal.looked_by", account()),
            optional("lookedByName", "withdrawal.looked_by_name", line(80)),
            optional("decidedAt", "withdrawal.decided_at", moment()),
            optional("decidedBy", "withdrawal.decided_by", account()),
            optional("noWorkWhy", "withdrawal.no_work_why", WORDS)));
  }

  /** After receipts, lines and checks, which they moved. */
  static List<CsvList> ofMoves() {
    return List.of(
        CsvList.of(
            "moves",
            "Presses that moved things, undone ones too",
            "move",
            numbered("move"),
            required("kind", "move.kind", word(MoveKind.class)),
            optional("loan", "move.loan_id", LOAN),
            optional("check", "move.check_id", CHECK),
            required("madeAt", "move.made_at", moment()),
            required("madeBy", "move.made_by", account()),
            optional("undoneAt", "move.undone_at", moment()),
            optional("undoneBy", "move.undone_by", account())),
        CsvList.of(
            "moved",
            "What each press moved",
            "moved",
            numbered("moved"),
            required("move", "moved.move_id", number("move", "move")),
            optional("receipt", "moved.receipt_id", number("receipt", "receipt")),
            optional("line", "moved.line_id", number("loan_line", "loan line")),
            optional("went", "moved.went", word("IN", "OUT")),
            optional("keptWith", "moved.kept_with", RIG),
            optional("check", "moved.check_id", CHECK)));
  }

  /** After all that may be kept: while a thing is, the database refuses what would change it. */
  static List<CsvList> ofAccidents() {
    return List.of(
        CsvList.of(
            "accidents",
            "Accidents",
            "accident",
            numbered("accident"),
            optional("loan", "accident.loan_id", LOAN),
            optional("rig", "accident.rig_id", RIG),
            required("happenedAt", "accident.happened_at", moment()),
            required("recordedAt", "accident.recorded_at", moment()),
            required("toldBy", "accident.told_by", account()),
            required("words", "accident.words", WORDS),
            optional("endedAt", "accident.ended_at", moment()),
            optional("endedBy", "accident.ended_by", account()),
            optional("endWhy", "accident.end_why", WORDS)),
        CsvList.of(
            "accident-items",
            "What was in hand at an accident",
            "accident_item",
            numbered("accident_item"),
            required("accident", "accident_item.accident_id", number("accident", "accident")),
            required("item", "accident_item.item_id", item()),
            optional("rig", "accident_item.rig_id", RIG),
            optional("arrowCount", "accident_item.arrow_count", whole(1, 2000)),
            optional(
                "withdrawal", "accident_item.withdrawal_id", number("withdrawal", "withdrawal"))));
  }

  /** After checks and upkeep, which answer them. */
  static List<CsvList> ofReports() {
    Codec report = number("report", "report");
    return List.of(
        CsvList.of(
            "reports",
            "What was told of bows",
            "report",
            numbered("report"),
            optional("rig", "report.rig_id", RIG),
            optional("loan", "report.loan_id", LOAN),
            optional("receipt", "report.receipt_id", number("receipt", "receipt")),
            required(
                "toldAt", "report.told_at", word("RECEIVING", "SESSION", "LOAN", "BOW", "CHECK")),
            required("happenedAt", "report.happened_at", moment()),
            required("recordedAt", "report.recorded_at", moment()),
            required("toldTo", "report.told_to", account()),
            required("partKnown", "report.part_known", yesNo()),
            required("dangerous", "report.dangerous", yesNo()),
            optional("words", "report.words", WORDS),
            optional("answer", "report.answer", word("NOTHING_THERE", "STOP", "WATCH")),
            optional("answeredAt", "report.answered_at", moment()),
            optional("answeredBy", "report.answered_by", account()),
            optional("answerWords", "report.answer_words", WORDS),
            optional("watchUntil", "report.watch_until", day()),
            optional("check", "report.check_id", CHECK),
            optional("upkeepRecord", "report.record_id", number("upkeep_record", "upkeep record"))),
        CsvList.of(
            "report-signs",
            "Signs told of bows",
            "report_sign",
            numbered("report_sign"),
            required("report", "report_sign.report_id", report),
            required("sign", "report_sign.sign", word(Noticed.class))),
        CsvList.of(
            "report-parts",
            "What each report stands against",
            "report_part",
            numbered("report_part"),
            required("report", "report_part.report_id", report),
            required("item", "report_part.item_id", item())));
  }

  /** Left empty, the next number is given. */
  static Column numbered(String table) {
    return optional("number", table + ".id", NUMBER);
  }
}
