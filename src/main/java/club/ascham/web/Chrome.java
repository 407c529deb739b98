package club.ascham.web;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.rules.Club;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.Locale;
import java.util.UUID;

/** The frame around every page: whose club, who is signed in, what was just done. */
@Named("chrome")
@RequestScoped
public class Chrome {
  private final Club club;
  private final Actor actor;
  private final RoutingContext request;

  Chrome(Club club, Actor actor, RoutingContext request) {
    this.club = club;
    this.actor = actor;
    this.request = request;
  }

  public String getClubName() {
    return club.rules().name();
  }

  public boolean isDemo() {
    return club.rules().demo();
  }

  public boolean isSignedIn() {
    return actor.signedIn();
  }

  public String getAccountName() {
    return actor.name();
  }

  /** The role's word: officer, volunteer, committee. */
  public String getRole() {
    return actor.role().name().toLowerCase(Locale.ROOT);
  }

  public boolean isOfficer() {
    return actor.isOfficer();
  }

  /** Whether this person may change anything at all. */
  public boolean isHand() {
    return actor.signedIn() && actor.role() != Role.COMMITTEE;
  }

  public String getPath() {
    return request.normalizedPath();
  }

  /** What was typed into the code box to come here; empty elsewhere. */
  public String getSought() {
    String typed = request.request().getParam("q");
    return typed == null || !getPath().equals("/find") ? "" : typed;
  }

  /** What the last save did; null where nothing was just saved. */
  public String getFlash() {
    return Flash.in(request);
  }

  /** A new key that makes a second press of the same form harmless. */
  public String getFormKey() {
    return UUID.randomUUID().toString();
  }
}
