package club.ascham.home;

import club.ascham.standing.State;

/**
 * What the thing that was found needs now, as the page where that is done.
 *
 * @param word on its button
 */
public record WhatNext(String word, String path) {

  /**
   * @param hand whether the person asking may change anything; who may only read is led to what can
   *     be read
   */
  static WhatNext of(FoundItem item, boolean hand) {
    if (hand && item.loan() != null) {
      return receive(item.loan().value());
    }
    if (item.rig() == null) {
      return new WhatNext("Open", "/items/" + item.code().display());
    }
    if (hand && item.rigState() == State.TO_BE_CHECKED && item.rigNeedsCheck()) {
      return new WhatNext("Check", "/check/" + item.rig().value());
    }
    return new WhatNext("Open", "/rigs/" + item.rig().value());
  }

  /** Whoever is at the door, or on the telephone: receiving is one choice of several there. */
  static WhatNext of(FoundPerson person) {
    return person.loan() != null
        ? new WhatNext("Open", "/loans/" + person.loan().value())
        : new WhatNext("Open", "/borrowers/" + person.borrower());
  }

  private static WhatNext receive(long loan) {
    return new WhatNext("Receive", "/receive/" + loan);
  }
}
