package club.ascham.register;

/** What the API's description says of the six lists of items alike. */
final class ItemWords {
  static final String LIST =
      "Query: words (each must occur in code, maker, model, batch, serial or notes), state (ready,"
          + " on-loan, to-be-checked, withdrawn, in-the-workshop, retired; any: retired ones too),"
          + " hand, bowIn (usable on a bow of so many inches), sort (code, maker, state, bought; with"
          + " - backwards), page (from 1), size (up to 200).";
  static final String ADD =
      "Lengths carry their unit (26 in, 660.4 mm); one without is read in the account's own unit."
          + " 422 names each wrong field.";
  static final String LIKE_THIS =
      "copies from 1 to 50; any other field says what differs. Serials, notes, day bought and what is"
          + " measured on the thing itself are not taken over.";
  static final String CHANGE =
      "The whole of it: what is left out is unknown from then on. version is the one that was read;"
          + " 409 when someone saved first.";
  static final String RETIRE =
      "Refused with 409 while it is fitted or on loan. on: the day, today where left out.";

  static final String FOUND =
      "The item, and in standsAgainst what it waits for from now on and what ends that: the"
          + " inspections of its kind; a withdrawal too where it was scrapped, failed its newest"
          + " inspection or was withdrawn before. 409 where it is not retired.";

  private ItemWords() {}
}
