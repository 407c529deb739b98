package club.ascham.exchange;

import club.ascham.store.DatabaseRefusal;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What to say of a row that the database refuses, by the constraint that spoke.
 *
 * @param column that is to blame; empty: the row as a whole
 */
record Refused(String column, String message) {
  private static final Pattern CONSTRAINT =
      Pattern.compile("(CHECK|UNIQUE|NOT NULL|FOREIGN KEY) constraint failed(.*)", Pattern.DOTALL);

  /** The column where a trigger's sentence belongs. */
  private static final Map<String, String> AT =
      Map.of(
          "what-was-decided-stays", "check",
          "no-verdict-says-that", "saidOf",
          "story-comes-after-what-is-sealed", "number");

  static final Map<String, String> SAID =
      Map.ofEntries(
          Map.entry(
              "(retired_on IS NULL) = (retired_why IS NULL)",
              "retiredOn and retiredWhy belong together: give both or neither"),
          Map.entry(
              "build <> 'ADJUSTABLE' OR limb_fitting", "what is adjustable needs its limbFitting"),
          Map.entry("build <> 'SCREW_IN' OR limb_model", "a screw-in riser needs its limbModel"),
          Map.entry("size IS NOT NULL OR bow_length_in", "limbs need a size or a bowLengthIn"),
          Map.entry(
              "(brace_low IS NULL) = (brace_high IS NULL)",
              "braceLow and braceHigh belong together, the lower first"),
          Map.entry("bow_from_in <= bow_to_in", "bowFromIn must not be above bowToIn"),
          Map.entry("pool = 0 OR arrow_count", "a pool needs its arrowCount"),
          Map.entry("dissolved_at >= assembled_at", "it is dissolved before it is assembled"),
          Map.entry("until_at >= from_at", "it is taken off before it is fitted"),
          Map.entry("finished_at >= begun_at", "it is finished before it is begun"),
          Map.entry(
              "finished_at IS NULL OR (brace IS NOT NULL",
              "a finished set-up needs brace, braceFrom, both tillers, nocking and screwsSeen"),
          Map.entry("age_band = 'ADULT' OR guardian", "a junior needs a guardian"),
          Map.entry("due_on >= date(issued_at", "it is due before it is issued"),
          Map.entry(
              "kind <> 'KIT' OR (borrower_id", "a kit needs a borrower and the terms accepted"),
          Map.entry("kind <> 'SESSION' OR leader", "a session needs a leader"),
          Map.entry("deposit_minor = 0 OR deposit_how", "a deposit needs its depositHow"),
          Map.entry(
              "deposit_back_minor BETWEEN 0 AND deposit_minor",
              "more of the deposit is given back than was taken"),
          Map.entry(
              "override_coach IS NULL OR (override_why",
              "overrideCoach is the coach who agreed to the overrideWhy: give both"),
          Map.entry("back_at >= out_at", "it is back before it is out"),
          Map.entry(
              "(back_at IS NULL) = (outcome IS NULL)",
              "backAt and outcome belong together: give both or neither"),
          Map.entry("back_count BETWEEN 0 AND arrow_count", "more arrows come back than went out"),
          Map.entry("missing_count IS NULL", "missingCount belongs to what came back by backCount"),
          Map.entry(
              "(briefed_by IS NULL) = (briefed_at IS NULL)",
              "briefedAt and briefedBy belong together: give both or neither"),
          Map.entry(
              "kind = 'LOOK' OR verdict <> 'FIT'",
              "a check that finds a bow fit needs brace, braceFrom and both tillers; without them it is a look"),
          Map.entry(
              "released_at IS NULL OR (verdict = 'FIT'",
              "only what is fit is put back, and by somebody: see verdict and releasedBy"),
          Map.entry("corrects_id IS NULL OR correction_why", "a correction needs correctionWhy"),
          Map.entry(
              "(kind = 'STEP') = (step IS NOT NULL)", "a step, and nothing else, names its step"),
          Map.entry(
              "(step IS NULL) = (by_whom IS NULL)",
              "step and byWhom belong together: give both or neither"),
          Map.entry(
              "thousandths IS NULL OR (step IS NOT NULL",
              "thousandths are of a step that puts in twists or turns a bolt"),
          Map.entry(
              "UNIQUE constraint failed: verdict_line.check_id",
              "that check says something in that place already"),
          Map.entry("json_valid(said_of)", "it is a list in square brackets, such as [\"Worn.\"]"),
          Map.entry(
              "what-was-decided-stays",
              "that check was decided before: its lines come with it, or all at once after it, and none is added"),
          Map.entry(
              "story-comes-after-what-is-sealed",
              "that number lies behind the record’s newest seal: leave it empty, and one is given"),
          Map.entry("undone_at >= made_at", "it is undone before it is made"),
          Map.entry(
              "(undone_at IS NULL) = (undone_by IS NULL)",
              "undoneAt and undoneBy belong together: give both or neither"),
          Map.entry(
              "(kind = 'PUT_BACK') = (check_id", "put-back is of a check, and nothing else is"),
          Map.entry(
              "(kind = 'PUT_BACK') = (loan_id", "put-back is of no loan, and all else is of one"),
          Map.entry(
              "CASE WHEN receipt_id IS NULL",
              "it moved one thing: give a receipt, a line or a check"),
          Map.entry(
              "(line_id IS NULL) = (went IS NULL)",
              "line and went belong together: give both or neither"),
          Map.entry("kept_with IS NULL OR (went", "keptWith is of what went out"),
          Map.entry("answered_at >= happened_at", "it is answered before it happened"),
          Map.entry(
              "(answer IS NULL) = (answered_at IS NULL)",
              "answer, answeredAt and answeredBy belong together: give all or none"),
          Map.entry(
              "(answer IS NOT NULL AND answer = 'WATCH')",
              "watchUntil is the day until which a watch is kept, and of no other answer"),
          Map.entry("answer IS NULL OR length(answer_words)", "an answer needs its answerWords"),
          Map.entry("ended_at >= recorded_at", "it is ended before it is recorded"),
          Map.entry(
              "loan_id IS NOT NULL OR rig_id IS NOT NULL", "an accident is of a loan or of a rig"),
          Map.entry(
              "(ended_at IS NULL) = (ended_by IS NULL)",
              "endedAt, endedBy and endWhy belong together: give all or none"),
          Map.entry("released_at >= happened_at", "it is released before it is withdrawn"),
          Map.entry(
              "(released_at IS NULL) = (released_by IS NULL)",
              "releasedAt and releasedBy belong together: give both or neither"),
          Map.entry("length(release_why) > 0", "a release needs releaseWhy"),
          Map.entry(
              "(decided_at IS NULL) = (decided_by IS NULL)",
              "decidedAt and decidedBy belong together: give both or neither"),
          Map.entry("decided_at >= happened_at", "it is decided before it is withdrawn"),
          Map.entry(
              "no_work_why IS NULL OR (work IS NULL",
              "noWorkWhy is for what was decided to need no work: see work, decidedAt and decidedBy"),
          Map.entry("looked_at IS NULL OR (released_at", "lookedAt is told of what was released"),
          Map.entry(
              "looked_by_name IS NULL OR (looked_by IS NULL",
              "lookedBy is a person of the club, lookedByName somebody else: give one of the two"),
          Map.entry(
              "every_days IS NOT NULL OR every_loans",
              "a rule needs everyDays, everyLoans or everyShots"),
          Map.entry("high >= low", "low must not be above high"),
          Map.entry("(item_id IS NULL) <> (rig_id IS NULL)", "it is about either an item or a rig"),
          Map.entry("UNIQUE constraint failed: fitting.item_id", "that item is fitted already"),
          Map.entry(
              "UNIQUE constraint failed: fitting.rig_id", "that place of the rig is taken already"),
          Map.entry("UNIQUE constraint failed: loan_line.item_id", "that item is lent already"),
          Map.entry(
              "UNIQUE constraint failed: withdrawal.item_id", "that item is withdrawn already"),
          Map.entry(
              "UNIQUE constraint failed: set_up.rig_id", "that rig has an open set-up already"),
          Map.entry(
              "UNIQUE constraint failed: upkeep_task.item_id", "that work is asked for already"));

  /** Empty: no rule of the database spoke. */
  static Optional<Refused> by(CsvList list, SQLException refusal) {
    String words = String.valueOf(refusal.getMessage());
    Optional<Refused> said =
        SAID.entrySet().stream()
            .filter(entry -> words.contains(entry.getKey()))
            .findFirst()
            .map(entry -> new Refused(AT.getOrDefault(entry.getKey(), ""), entry.getValue()));
    Matcher constraint = CONSTRAINT.matcher(words);
    if (said.isPresent() || !constraint.find()) {
      return said.or(() -> DatabaseRefusal.in(refusal).map(rule -> at(rule)));
    }
    List<String> columns =
        list.columns().stream()
            .filter(column -> constraint.group(2).matches("(?s).*\\b" + column.field() + "\\b.*"))
            .map(Column::name)
            .toList();
    String all = columns.stream().collect(Collectors.joining(" and "));
    return switch (constraint.group(1)) {
      case "UNIQUE" -> told(columns, "another row has the same " + all);
      case "NOT NULL" -> told(columns, "it is empty; every row needs it");
      case "FOREIGN KEY" -> Optional.of(new Refused("", "it names something that is not there"));
      default ->
          columns.size() == 1
              ? told(columns, "that is outside what may stand there")
              : Optional.empty();
    };
  }

  private static Refused at(DatabaseRefusal rule) {
    return new Refused(AT.getOrDefault(rule.rule(), ""), rule.getMessage());
  }

  private static Optional<Refused> told(List<String> columns, String message) {
    return Optional.of(
        new Refused(columns.isEmpty() ? "" : columns.get(columns.size() - 1), message));
  }
}
