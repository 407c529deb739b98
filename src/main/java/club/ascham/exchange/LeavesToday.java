package club.ascham.exchange;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Weight;
import club.ascham.form.WholeWords;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Nothing leaves by a file while something keeps it in, the bow as a whole too; what speaks against
 * it asks for the loan's reason, as the form does.
 *
 * <p>A file's loans come before the inspections that let them go, so an import is judged once all
 * of it is in.
 */
@ApplicationScoped
class LeavesToday implements AfterRows {
  private static final String SAY_WHY =
      " To let it leave all the same, say why in whole words in the loan’s overrideWhy.";

  private final Rows rows;
  private final Concerns concerns;
  private final ClubTime time;

  LeavesToday(Rows rows, Concerns concerns, ClubTime time) {
    this.rows = rows;
    this.concerns = concerns;
    this.time = time;
  }

  /**
   * A new line that is open and left today.
   *
   * @param rig that it goes with or is fitted to; null: none (likewise rigBareCode)
   * @param overrideWhy null: none was given
   */
  record Line(
      long number,
      LoanId loan,
      ItemId item,
      String bareCode,
      RigId rig,
      String rigBareCode,
      String overrideWhy) {
    String name() {
      if (rig == null) {
        return new ItemCode(bareCode).display();
      }
      return rigBareCode == null ? "Rig " + rig.value() : new ItemCode(rigBareCode).display();
    }

    boolean saysWhy() {
      return overrideWhy != null && WholeWords.isReason(overrideWhy);
    }
  }

  @Override
  public String list() {
    return "loan-lines";
  }

  @Override
  public List<BadCell> check(Added added) {
    List<Line> lines =
        rows.list(
            Line.class,
            """
            SELECT x.id AS number, x.loan_id, x.item_id, i.code AS bare_code, coalesce(x.rig_id, f.rig_id) AS rig,
                   b.code AS rig_bare_code, l.override_why
              FROM json_each(?1) t JOIN loan_line x ON x.id = t.value
              JOIN item i ON i.id = x.item_id JOIN loan l ON l.id = x.loan_id
              LEFT JOIN fitting f ON f.item_id = x.item_id AND f.until_at IS NULL
              LEFT JOIN fitting p ON p.rig_id = coalesce(x.rig_id, f.rig_id) AND p.place = 'BODY' AND p.until_at IS NULL
              LEFT JOIN item b ON b.id = p.item_id
             WHERE x.back_at IS NULL AND x.out_at >= ?2 ORDER BY x.id""",
            added.numbers(),
            time.beginOf(time.today()));
    Map<RigId, Against> ofRigs =
        concerns.ofRigs(lines.stream().map(Line::rig).filter(Objects::nonNull).distinct().toList());
    Map<ItemId, Against> ofItems =
        concerns.ofItems(lines.stream().map(Line::item).distinct().toList());
    List<BadCell> bad = new ArrayList<>();
    // A bow is one thing, named once a loan, and not once for each of its parts.
    Set<List<Object>> judged = new HashSet<>();
    for (Line line : lines) {
      Against against = ofItems.get(line.item());
      if (line.rig() != null) {
        against = ofRigs.get(line.rig()).and(against);
      }
      if (judged.add(List.of(line.loan(), line.name()))) {
        refusal(added, line, against, bad);
      }
    }
    return bad;
  }

  private static void refusal(Added added, Line line, Against against, List<BadCell> bad) {
    if (against.blocks()) {
      bad.add(
          added.at(line.number(), "item", line.name() + " can’t leave today. " + against.keptIn()));
    } else if (against.speaks() && !line.saysWhy()) {
      bad.add(
          added.at(
              line.number(),
              "loan",
              line.name() + ": " + against.said(Weight.SPEAKS_AGAINST) + SAY_WHY));
    }
  }
}
