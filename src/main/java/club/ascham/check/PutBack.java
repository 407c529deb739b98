package club.ascham.check;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.MoveId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.undo.Moves;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts a bow back into use after a check that found it fit: a person's own press. */
@ApplicationScoped
class PutBack {
  private final RigSpecs specs;
  private final Checks checks;
  private final Queue queue;
  private final Concerns concerns;
  private final Reports reports;
  private final Moves moves;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  PutBack(
      RigSpecs specs,
      Checks checks,
      Queue queue,
      Concerns concerns,
      Reports reports,
      Moves moves,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time) {
    this.specs = specs;
    this.checks = checks;
    this.queue = queue;
    this.concerns = concerns;
    this.reports = reports;
    this.moves = moves;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Where a bow stands that was put back: something else may still keep it in. */
  record Stands(String rig, State state, Against against) {}

  Stands now(RigId rig) {
    return new Stands(
        specs.of(rig).map(RigCard::name).orElse(""),
        queue.state(rig, time.today()),
        concerns.of(rig));
  }

  @Writes
  Outcome<MoveId> putBack(long id) {
    Checks.Row check =
        checks.one(id).orElseThrow(() -> new NoSuchThing("There is no check " + id + "."));
    RigId rig = check.rig();
    RigCard card = specs.of(rig).orElseThrow(() -> new NoSuchThing("That bow was taken apart."));
    Optional<String> refusal = refusal(check);
    if (refusal.isPresent()) {
      return Outcome.refused(Refusal.now("Not put back", "check", refusal.get()));
    }
    Instant now = time.now();
    rows.change(
        "UPDATE bow_check SET released_at = ?2, released_by = ?3 WHERE id = ?1",
        id,
        now,
        actor.id());
    story.tell(Story.Told.ofRig(now, actor.id(), rig, card.partIds(), "Put back after its check."));
    return Outcome.done(new MoveId(moves.putBack(id)), said(now(rig)));
  }

  private static String said(Stands now) {
    return now.state() == State.READY
        ? now.rig() + " is put back: ready."
        : now.rig() + " is put back, and stays in all the same. " + now.against().keptIn();
  }

  private Optional<String> refusal(Checks.Row check) {
    if (check.isReleased()) {
      return Optional.of("It was put back already.");
    }
    if (!check.isFit()) {
      return Optional.of("This check did not find it fit: it can't be put back on it.");
    }
    if (queue.happenedSince(check.rig(), check.id(), check.happenedAt())) {
      return Optional.of(
          "Something happened to this bow after this check: it came back again, was checked again"
              + " or set up anew. The last check counts.");
    }
    List<Report> open = reports.openOf(check.rig());
    if (!open.isEmpty()) {
      return Optional.of(
          "Something was told of it and is not answered: "
              + open.stream().map(Report::said).collect(Collectors.joining("; "))
              + ". Answer it first.");
    }
    return switch (queue.state(check.rig(), time.today())) {
      case ON_LOAN -> Optional.of("It is on loan: receive it first.");
      case WITHDRAWN ->
          Optional.of("A part of it is withdrawn: someone with the permit releases that first.");
      case IN_THE_WORKSHOP -> Optional.of("It is in the workshop: its set-up is finished there.");
      case RETIRED, TO_BE_CHECKED, READY -> Optional.empty();
    };
  }
}
