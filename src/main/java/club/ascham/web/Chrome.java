package club.ascham.web;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** The frame around every page: whose club, who is signed in, what was just done. */
@Named("chrome")
@RequestScoped
public class Chrome {
  private final WhoseClub club;
  private final WhoActs actor;
  private final RoutingContext request;
  private final Sought sought;
  private final Presses presses;

  Chrome(WhoseClub club, WhoActs actor, RoutingContext request, Sought sought, Presses presses) {
    this.club = club;
    this.actor = actor;
    this.request = request;
    this.sought = sought;
    this.presses = presses;
  }

  public String getClubName() {
    return club.name();
  }

  public boolean isDemo() {
    return club.demo();
  }

  public boolean isSignedIn() {
    return actor.signedIn();
  }

  public String getAccountName() {
    return actor.name();
  }

  /** The role's word: officer, volunteer, committee. */
  public String getRole() {
    return actor.roleWord();
  }

  public boolean isOfficer() {
    return actor.isOfficer();
  }

  /** Whether this person may change anything at all. */
  public boolean isHand() {
    return actor.mayChange();
  }

  public String getPath() {
    return request.normalizedPath();
  }

  /** A page that the frame leads to. */
  public record Page(String href, String word, boolean here) {}

  /** The pages that this person has something to do on, in the order of an evening. */
  public List<Page> getPages() {
    List<Page> pages = new ArrayList<>();
    pages.add(new Page("/", "Home", getPath().equals("/")));
    if (isOfficer()) {
      pages.add(page("/issue", "Issue"));
    }
    if (isHand()) {
      pages.add(page("/receive", "Receive"));
    }
    pages.add(page("/check", "Check"));
    pages.add(page("/rigs", "Rigs"));
    pages.add(page("/register", "Register"));
    pages.add(page("/upkeep", "Upkeep"));
    pages.add(page("/fleet", "Fleet"));
    if (isHand()) {
      pages.add(page("/bench", "Bench"));
    }
    pages.add(page("/rules", "Rules"));
    return pages;
  }

  private Page page(String href, String word) {
    return new Page(href, word, getPath().startsWith(href));
  }

  /** What was typed into the code box to come here; empty elsewhere. */
  public String getSought() {
    if (!getPath().equals("/find")) {
      return "";
    }
    String code = request.request().getParam("q");
    return code == null ? sought.words() : code;
  }

  /** What the last save did; null where nothing was just saved. */
  public String getFlash() {
    return Flash.in(request);
  }

  /** How what the last save did is undone; null where it is not. */
  public Go.Undo getUndo() {
    return Flash.undoIn(request);
  }

  /** The form that comes back, where it was sent before with other values; null: it was not. */
  public Presses.SentBefore getSentBefore() {
    return presses.sentBefore();
  }

  /** A new key that makes a second press of the same form harmless. */
  public String getFormKey() {
    return UUID.randomUUID().toString();
  }
}
