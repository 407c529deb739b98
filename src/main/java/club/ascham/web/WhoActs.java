package club.ascham.web;

import club.ascham.id.AccountId;

/** Who asks for a page or presses its button, as far as the frame has to know. */
public interface WhoActs {
  boolean signedIn();

  AccountId id();

  String name();

  /** officer, volunteer or committee. */
  String roleWord();

  boolean isOfficer();

  /** Whether this person may change anything at all. */
  boolean mayChange();
}
