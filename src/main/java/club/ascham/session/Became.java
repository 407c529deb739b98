package club.ascham.session;

import club.ascham.concern.Against;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What became of a bow that was back from a session, and why, as it stands now.
 *
 * @param state null: it was taken apart since
 * @param word in two or three words: on the rack, to be checked, stays in
 * @param why empty: nothing is to be said
 */
record Became(RigId rig, String code, State state, String word, String why) {

  private static final String FULL_CHECK = "Looked over, fine; a full check is due.";
  private static final Set<Matter> SAID_BY_ITS_STATE =
      Set.of(Matter.NOT_CHECKED, Matter.NOT_SET_UP);

  static Became of(Sessions.Out rig, Sessions.Stands stands, Against against) {
    if (stands == null) {
      return new Became(rig.rig(), rig.code(), null, "taken apart", "");
    }
    Against beyond = against.without(SAID_BY_ITS_STATE);
    String speaks = beyond.said(Weight.SPEAKS_AGAINST);
    if (beyond.blocks() && stands.state() != State.ON_LOAN) {
      return new Became(rig.rig(), rig.code(), stands.state(), "stays in", beyond.keptIn());
    }
    return switch (stands.state()) {
      case READY -> new Became(rig.rig(), rig.code(), State.READY, "back on the rack", speaks);
      case TO_BE_CHECKED ->
          new Became(
              rig.rig(),
              rig.code(),
              State.TO_BE_CHECKED,
              "to be checked",
              !speaks.isEmpty() ? speaks : stands.fullCheckDue() ? FULL_CHECK : "");
      case IN_THE_WORKSHOP ->
          new Became(
              rig.rig(),
              rig.code(),
              State.IN_THE_WORKSHOP,
              "in the workshop",
              "It is set up before it goes out.");
      case ON_LOAN -> new Became(rig.rig(), rig.code(), State.ON_LOAN, "out", "");
      case WITHDRAWN, RETIRED ->
          new Became(rig.rig(), rig.code(), stands.state(), stands.state().said(), speaks);
    };
  }

  /** Whether anybody may take it again at once. */
  public boolean isReady() {
    return state == State.READY;
  }

  /** How many went where, in one sentence. */
  static String said(List<Became> all) {
    List<String> said = new ArrayList<>();
    for (String word : all.stream().map(Became::word).distinct().toList()) {
      long many = all.stream().filter(one -> one.word().equals(word)).count();
      said.add(many + " " + (word.equals("stays in") && many > 1 ? "stay in" : word));
    }
    return all.isEmpty() ? "" : String.join(", ", said) + ".";
  }
}
