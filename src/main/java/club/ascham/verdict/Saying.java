package club.ascham.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All that verdicts say, and the one place where it is put into words. Each names in braces what it
 * leaves open ({@link Blank}); after a bar comes the caution. The names are kept with the checks:
 * the words of one may change, and what it is said of never does.
 */
public enum Saying {
  /** Words of another room, of a person, or of a verdict from before there were sayings. */
  AS_SAID("{text}"),
  AS_SAID_WITH_CAUTION("{text} | {text}"),

  FINE("What was looked at is fine, and the readings lie within their bands."),
  LOOKED_OVER("Looked over after a session: fine."),
  LOOKED_OVER_CHECK_DUE("Looked over: fine. A full check is due."),
  CAME_BACK_STRUNG(
      "It came back strung: look along both limbs, and tell the borrower to unstring after use."),

  OUTSIDE("{quantity} is {length}, outside {band}."),
  BEYOND("{quantity} is {length}, beyond the limits {band}."),
  TARGET("{quantity}: {text}"),
  SET_UP_FIGURES(
      "Set-up figures: brace {length} from {point}, tiller {length} (upper {length}, lower"
          + " {length})."),
  SCATTER("A change of up to {length} may be nothing but two people measuring."),
  SCATTER_JUDGED(
      "A change of up to {length} may be nothing but two people measuring: judged, not measured."),

  SIGN("{part}: {text}"),
  SIGN_FINE("{part}: {text} (fine)"),
  SIGN_NOTE("{part}: {text} (a note: {text})"),
  SIGN_STOP("{part}: {text} (a stop: {text})"),

  TOLD("Told, and not answered: {text}."),
  TOLD_STANDS(
      "What was told of a bow stands against it until a person has looked and answers: a check that"
          + " does not answer it finds nothing fit (judged)."),
  ONLY_A_LOOK("This was a look, without readings: it finds nothing fit."),
  READINGS_RELEASE_NOTHING("Readings release nothing: take no more of them."),
  DANGER_STANDS(
      "While something that may break it stands against a bow, nobody strings it to measure it, and"
          + " no check finds it fit (judged)."),

  FALL("A loose without an arrow, or a fall, was reported: harm may not show."),
  FALL_HARMS(
      "Loosed without an arrow, the bow keeps the energy: limbs, string or riser may break, screws"
          + " come loose ({text}). To withdraw it until it is inspected is common practice."),
  FIXED_TILLER_CHANGED("Tiller has changed since the set-up, and nothing on this bow sets it."),
  FIXED_TILLER_WITHDRAWS(
      "Where tiller is fixed, a change means that a limb has changed: the bow is withdrawn, never"
          + " adjusted (our judgement)."),
  NO_BOLTS_DOING(
      "A tiller distance that moved by more than {length} beyond the change of brace, or by more"
          + " than {length} after someone looked, is no bolt's doing (our judgement)."),

  BRACE_NOT_FOLLOWED(
      "Brace {rose}, and the tiller distances did not follow: was brace measured from the same"
          + " point?"),
  BOTH_MOVED(
      "Both tiller distances are {larger} than they were, and brace is as it was: was brace measured"
          + " from the same point?"),
  ALL_MOVED(
      "Brace {rose}, and both tiller distances are {larger}: was brace measured from the same"
          + " point?"),
  ONE_NOT_FOLLOWED(
      "Brace {rose}, and the {side} tiller distance did not follow: a limb may not be seated."),
  ONE_MOVED(
      "The {side} tiller distance has moved by {about} that neither the change of brace nor a bolt"
          + " explains: a limb may not be seated."),
  BRACE_FAR_OFF("With brace so far off, a loop or a limb may not be seated."),
  TILLER_FAR_OFF("So far beyond, tiller is sooner a limb out of its seat than a bolt."),
  TURNED_OVER(
      "Tiller is nearer to its set-up figure turned over than to that figure: the limbs may be the"
          + " wrong way up."),
  BRACE_WRONG_WAY(
      "Brace moved the wrong way: twists put in raise it. Look which way the string is twisted and"
          + " whether the loops were seated, then count again."),
  TWISTS_NOT_SEEN("Brace is as it was before the twists: how many were put in or taken out?"),
  TILLER_WRONG_WAY(
      "Tiller moved the wrong way: tightening a bolt should make that limb's distance smaller."),

  NO_STRING_ADJUSTED("No string is adjusted when {text} (our judgement)."),
  BRACE_EXPECTED("Brace about {length} ({span}, 9 times in 10). {capital}."),
  TILLER_EXPECTED("Tiller about {length} ({span}, 9 times in 10). {capital}."),
  TILLER_EXPECTED_IN_ALL(
      "Tiller about {length} ({span}, 9 times in 10). {capital}. In all about {quarters}, both bolts"
          + " together; measure after each step."),

  STRING_OFF(
      "Take the string off with the stringer. | Keep your face away from the tips; nobody stands in"
          + " line with them."),
  STRING_ON("Put the string on with the stringer. | Keep your face away from the tips."),
  LOOPS("See that both loops sit in their grooves, the larger one at the top."),
  STRING_LINE(
      "Before anything is drawn, look along the bow: the string runs down the middle of both limbs."
          + " | Don't draw it while the string is out of line. Never let it go without an arrow."),
  MEASURE_AGAIN("Measure brace and both tiller distances again: each moves the others."),
  LEAVE_STRING_OFF(
      "If it is strung: take the string off with the stringer, and leave it off. | Don't draw it."
          + " Keep your face away from the tips; nobody stands in line with them."),
  ANSWER_TOLD("Look at what was told, and answer it."),
  ANSWER_TOLD_THEN("Look at what was told, and answer it. Only then is it strung, and checked."),
  CHECK_AGAIN("Then check the bow again."),
  RELEASE("Decide what stands against it, and release it. Only then is it strung, and checked."),
  PARTS_RIGHT(
      "Put the parts right, or correct the record: {text}. | Never use halves of two different pairs"
          + " together."),
  LOOK_AT_POCKETS(
      "Look before anything is turned: the limb marked U or upper is the upper one, and both are"
          + " seated in their pockets."),
  LOOK_AT_SEATS(
      "Look first: the limb marked U or upper is the upper one, both lie flat on their seats and are"
          + " held hand-tight."),
  LOOK_AT_LOOPS(
      "Look first: no loop is caught beside its groove, and it is this bow's own string."),
  LOOK_ALONG(
      "Look first: both loops in their grooves, no strand cut, the servings tight, the grooves"
          + " smooth, and along both limbs for a crack, a delamination or a twist. If anything is"
          + " not as it should be, stop here and check the bow again. | Don't draw it before you have"
          + " looked."),
  SAME_POINT(
      "Before the string comes off, measure brace and both tiller distances again, brace from {point}"
          + " as at the set-up. If you read something else now, check the bow again with that."),
  COUNT_TWISTS(
      "Count the twists, and see that it is this bow's own string. Were some put in without a note:"
          + " take those out, string the bow and check it again."),
  COUNT_TWISTS_ON_RECORD(
      "Count the twists (on record: {count}), and see that it is this bow's own string. Were some put"
          + " in without a note: take those out, string the bow and check it again."),
  HOW_MANY_TWISTS(
      "How many twists were put in or taken out? Count them, and see that they stayed in when the"
          + " string went on; then measure again. More come after that."),

  TWISTS_IN(
      "Put in about {twists} ({saying}), turning a loop the way the string is already twisted."),
  TWISTS_IN_UNTWISTED(
      "Put in about {twists} ({saying}), turning a loop the way the serving is wound."),
  TWISTS_OUT(
      "Take out about {twists} ({saying}), turning a loop against the way the string is twisted."),
  AT_LEAST("{count} or more may be needed"),
  AS_FAR_AS_CAN_BE_TOLD("as far as can be told"),
  BETWEEN("{count} to {count} may be needed"),
  ROOM(
      "{saying}; it has room for {count} and gets there with a chance of about {count} in 100, else"
          + " another string"),

  TOO_FEW_TWISTS(
      "Only then fit another string: too few twists would be left in this one. {saying}"),
  OVERTWISTED("Fit another string: this one would be overtwisted. {saying}"),
  ANOTHER_STRING(
      "One made for a {count} in bow, untwisted about {longer} than this one. Then set the bow up"
          + " again from brace to nocking point."),
  ANOTHER_STRING_MEASURED(
      "One made for a {count} in bow, untwisted about {longer} than this one: {length}. Then set the"
          + " bow up again from brace to nocking point."),
  WORN_STRING(
      "Fit another string, one made for a {count} in bow: no twists go into this one, {text}. Then set"
          + " the bow up again from brace to nocking point. Or somebody looks at this one and keeps it"
          + " on first."),
  WORN_STRING_TOO_HIGH(
      "Only then fit another string, one made for a {count} in bow: this one is not adjusted any more,"
          + " {text}. Then set the bow up again from brace to nocking point. Or somebody looks at this"
          + " one and keeps it on first."),

  TO_WORKSHOP("Send it to the workshop. | Leave the string off and the limb bolts alone."),
  TO_WORKSHOP_SINCE(
      "Send it to the workshop: {saying} | Leave the string off and the limb bolts alone."),
  NO_BOLT_HAS_ROOM(
      "no limb bolt has room the way it would have to be turned. Other limbs may suit this riser"
          + " better; a coach or a bowyer says what else."),
  FOR_A_PERMIT_HOLDER("tiller is set at the limb bolts, and that is for a permit holder."),
  FIND_OUT_WHY("someone finds out why before a bolt is turned again."),
  PUT_BOLTS_BACK("a permit holder puts the bolts back and finds out why."),
  LOCK_LOOSENED(
      "Loosen the locking screw of each bolt that is to be turned. | Never touch a limb bolt on a"
          + " strung bow."),
  LOCK_TIGHTENED("Tighten the locking screws. | A bow with a loose locking screw is not strung."),
  BOLT_IN(
      "Turn the {side} limb bolt in (tighten) by {turn}. | Stop where it comes to its seat; never"
          + " force it."),
  BOLT_OUT(
      "Turn the {side} limb bolt out (loosen) by {turn}. | Never beyond the maker's {number} turns"
          + " out."),
  BOLT_OUT_BACK("Turn the {side} limb bolt out (loosen) by {turn}. | Only back to where it stood."),

  UNSTRING("If it is strung: string off with the stringer, and leave it off. Don't draw it."),
  LOOK_AT_TILLER("Tiller: measure again, upper distance first; if it stands, a limb has changed."),
  LOOK_AT_SCREW_IN_TILLER(
      "Tiller: look whether the limbs are the right way up, flat on their seats and hand-tight, and"
          + " measure again; if it stands, a limb has changed."),
  LOOK_AT_BOTH_SEATS(
      "Before it is strung again the permit holder looks at both limbs and their seats: which way up"
          + " they are, whether they lie in their pockets, and whether one has a crack, a delamination"
          + " or a twist."),
  STRING_NEEDS("String: fit another one, then set the bow up again from brace to nocking point."),
  LIMBS_NEED(
      "Limbs: someone competent looks at both, unstrung; a limb with a crack, a delamination or a"
          + " twist is not shot again."),
  BOLTS_NEED(
      "Limb bolts: string off, then inspect thread, seat, washer, locking screw and turns out on both"
          + " sides."),
  SCREW_IN_BOLTS_NEED("Limb bolts: string off, then look at thread, seat, washer and tightness."),
  RISER_NEEDS(
      "Riser: someone competent looks at it, unstrung: limb seats, bushes, sight window, grip."),
  REST_NEEDS(
      "Arrow rest: fit another, then set its height, the centre shot and the nocking point.");

  private final Phrase words;
  private final Phrase caution;

  Saying(String pattern) {
    int bar = pattern.indexOf(" | ");
    words = Phrase.of(bar < 0 ? pattern : pattern.substring(0, bar));
    caution = bar < 0 ? null : Phrase.of(pattern.substring(bar + 3));
  }

  /** Fixed words and the blanks between them: one text more than there are blanks. */
  private record Phrase(List<String> texts, List<Blank> blanks) {
    private static final Pattern OPEN = Pattern.compile("\\{([a-z]+)}");

    static Phrase of(String pattern) {
      List<String> texts = new ArrayList<>();
      List<Blank> blanks = new ArrayList<>();
      Matcher open = OPEN.matcher(pattern);
      int done = 0;
      while (open.find()) {
        texts.add(pattern.substring(done, open.start()));
        blanks.add(Blank.valueOf(open.group(1).toUpperCase(Locale.ROOT)));
        done = open.end();
      }
      texts.add(pattern.substring(done));
      return new Phrase(texts, blanks);
    }

    String said(List<?> of) {
      StringBuilder said = new StringBuilder(texts.get(0));
      for (int i = 0; i < blanks.size(); i++) {
        said.append(blanks.get(i).said(of.get(i))).append(texts.get(i + 1));
      }
      return said.toString();
    }
  }

  List<Blank> blanks() {
    return caution == null
        ? words.blanks()
        : Stream.concat(words.blanks().stream(), caution.blanks().stream()).toList();
  }

  boolean takes(List<?> of) {
    List<Blank> blanks = blanks();
    boolean takes = blanks.size() == of.size();
    for (int i = 0; takes && i < of.size(); i++) {
      takes = blanks.get(i).takes(of.get(i));
    }
    return takes;
  }

  Optional<String> beyond(List<?> of) {
    List<Blank> blanks = blanks();
    return IntStream.range(0, of.size())
        .mapToObj(i -> blanks.get(i).beyond(of.get(i)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** What goes into the blanks, of what was kept. */
  List<Object> read(List<?> kept) {
    List<Blank> blanks = blanks();
    if (blanks.size() != kept.size()) {
      throw new IllegalArgumentException(this + " is said of " + blanks.size() + " things");
    }
    List<Object> read = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      read.add(blanks.get(i).read(kept.get(i)));
    }
    return read;
  }

  String words(List<?> of) {
    return words.said(of);
  }

  Optional<String> caution(List<?> of) {
    return Optional.ofNullable(caution)
        .map(phrase -> phrase.said(of.subList(words.blanks().size(), of.size())));
  }
}
