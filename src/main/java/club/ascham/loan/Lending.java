package club.ascham.loan;

import club.ascham.Settings;
import club.ascham.people.Actor;
import club.ascham.rules.Club;
import club.ascham.time.ClubTime;
import club.ascham.units.Money;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Currency;
import java.util.List;

/** The terms under which this club lends today, read against by whoever is acting. */
@ApplicationScoped
public class Lending {
  private final Club club;
  private final Actor actor;
  private final ClubTime time;
  private final Currency currency;

  Lending(Club club, Actor actor, ClubTime time, Settings settings) {
    this.club = club;
    this.actor = actor;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
  }

  public LendingTerms terms() {
    return new LendingTerms(time.today(), actor.unit(), currency, club.rules().loanDays());
  }

  public Money usualDeposit() {
    return new Money(club.rules().depositMinor());
  }

  /** What a borrower accepts, a sentence each. */
  public List<String> termLines() {
    return club.rules().termLines();
  }

  public Currency currency() {
    return currency;
  }
}
