package club.ascham.session;

import club.ascham.check.StrangerAsked;
import club.ascham.check.StrangerBack;
import club.ascham.check.Strangers;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.receive.LineAsked;
import club.ascham.receive.LineBack;
import club.ascham.report.PartChoice;
import club.ascham.report.Reports;
import club.ascham.report.Telling;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.session.ReturnSession.RigBack;
import club.ascham.session.ReturnSession.SetBack;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads what is said of a session that comes back, and what became of each of its bows. */
@ApplicationScoped
class ReturnDesk {
  private final Sessions sessions;
  private final Reports reports;
  private final LoanLines lines;
  private final RigSpecs specs;
  private final Strangers strangers;
  private final Concerns concerns;
  private final ClubTime time;

  ReturnDesk(
      Sessions sessions,
      Reports reports,
      LoanLines lines,
      RigSpecs specs,
      Strangers strangers,
      Concerns concerns,
      ClubTime time) {
    this.sessions = sessions;
    this.reports = reports;
    this.lines = lines;
    this.specs = specs;
    this.strangers = strangers;
    this.concerns = concerns;
    this.time = time;
  }

  /** What went out beside the bows and is not back, with its fields. */
  List<LineAsked> beside(LoanId loan, Typed typed) {
    return besideOut(loan).stream().map(line -> new LineAsked(line, typed)).toList();
  }

  /** What went out beside the bows and came back damaged or fewer. */
  List<LoanLine> notWhole(LoanId loan) {
    return lines.of(loan).stream().filter(LoanLine::isNotWhole).toList();
  }

  private List<LoanLine> besideOut(LoanId loan) {
    return lines.of(loan).stream().filter(line -> line.isOut() && line.rig() == null).toList();
  }

  /** How each bow that is out is asked for a code that is not on its list. */
  Map<RigId, StrangerAsked> strangers(Collection<RigId> rigs, Typed typed) {
    Map<RigId, StrangerAsked> asked = new HashMap<>();
    specs
        .of(rigs)
        .forEach(
            (rig, card) ->
                asked.put(rig, strangers.asked(typed, StrangerBack.Fields.of(rig), card)));
    return asked;
  }

  /**
   * What is said of each rig that is out: {@code out-RIG} ticked: not back yet; what was told of it
   * (as everywhere, each field with the rig's number after it); {@code seen-RIG} ticked with {@code
   * words-RIG}; a code on it that is not on its list ({@code stranger-RIG}, {@code
   * strangerAnswer-RIG}); else looked over, fine. Of what went beside them: {@code out-line-LINE}
   * ticked: not back yet; else as a receipt reads it.
   */
  SetBack read(LoanId loan, Typed typed) {
    List<Sessions.Out> rigs = sessions.rigsOf(loan);
    List<PartChoice> parts = reports.outWith(loan);
    Map<RigId, RigCard> cards = specs.of(rigs.stream().map(Sessions.Out::rig).toList());
    List<RigBack> back = new ArrayList<>();
    for (Sessions.Out rig : rigs) {
      List<PartChoice> its = parts.stream().filter(part -> rig.rig().equals(part.rig())).toList();
      if (!rig.isOut()) {
        late(typed, rig.rig(), its, back);
      } else if (!typed.ticked(rig.stillOutField())) {
        back.add(rigBack(typed, rig, cards.get(rig.rig()), its));
      }
    }
    List<LineBack> beside =
        besideOut(loan).stream()
            .map(
                line ->
                    LineBack.read(
                        typed, line, !typed.ticked(new LineAsked(line, typed).stillOutField())))
            .toList();
    if (back.isEmpty() && beside.stream().noneMatch(LineBack::back)) {
      typed.fault("rigs", "None of it is back: there is nothing to save.");
    }
    return new SetBack(back, beside);
  }

  /** Somebody was quicker; what this hand tells of it is kept, and nobody is asked twice. */
  private static void late(Typed typed, RigId rig, List<PartChoice> parts, List<RigBack> back) {
    Telling.Fields fields = Telling.Fields.of(rig);
    Telling told =
        Telling.parse(
            StrangerBack.Fields.of(rig).inWords(typed, fields.words()).with(fields.notSo(), "on"),
            fields,
            parts,
            Telling.WordsAlone.SOMETHING_ELSE);
    if (!told.isNothing()) {
      back.add(new RigBack(rig, told, null));
    }
  }

  private RigBack rigBack(Typed typed, Sessions.Out rig, RigCard card, List<PartChoice> parts) {
    Telling told =
        Telling.parse(
            typed, Telling.Fields.of(rig.rig()), parts, Telling.WordsAlone.SOMETHING_ELSE);
    if (typed.ticked(rig.seenField()) && told.isNothing()) {
      typed.fault(rig.wordsField(), "What was seen? Tick it, or say it in a few words.");
    }
    StrangerBack stranger =
        card == null
            ? null
            : strangers.read(typed, StrangerBack.Fields.of(rig.rig()), card).orElse(null);
    return new RigBack(rig.rig(), told, stranger);
  }

  /** What became of these bows, as it stands now; the codes are those they went out by. */
  List<Became> became(List<Sessions.Out> rigs) {
    List<RigId> ids = rigs.stream().map(Sessions.Out::rig).toList();
    Map<RigId, Against> against = concerns.ofRigs(ids);
    Map<RigId, Sessions.Stands> stands = sessions.stands(ids, time.today());
    return rigs.stream()
        .map(rig -> Became.of(rig, stands.get(rig.rig()), against.get(rig.rig())))
        .toList();
  }
}
