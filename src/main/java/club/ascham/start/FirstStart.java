package club.ascham.start;

import club.ascham.Settings;
import club.ascham.demo.DemoClub;
import club.ascham.door.FirstOfficer;
import club.ascham.people.Account;
import club.ascham.people.Accounts;
import club.ascham.people.Passwords;
import club.ascham.people.Role;
import club.ascham.rules.Club;
import club.ascham.store.Writes;
import club.ascham.story.Watch;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import jakarta.enterprise.context.ApplicationScoped;

/** Fills a data folder that was never opened before. */
@ApplicationScoped
class FirstStart {
  static final String DEMO_PASSWORD = "demo-fleet";
  private static final String BRACE_TABLE_TO_START_WITH = "TRADE_OUTREACH_2020";

  private static final Club.OnTheSlip DEMO_SLIP =
      new Club.OnTheSlip(
          "01632 960142",
          "bows@wherrybridge.example",
          """
          The kit stays the club’s and comes back by the day on this slip.
          Whoever signs answers for loss and damage beyond wear.
          Nobody but the archer named here shoots it.
          It is shot on the club’s range, or where the club’s coach has said so.""",
          Length.ofMm(6),
          "The club’s own: about twice what two of its readers differ by.");

  private final Settings settings;
  private final Club club;
  private final Accounts accounts;
  private final Passwords passwords;
  private final FirstOfficer firstOfficer;
  private final DemoClub demoClub;
  private final Watch watch;
  private final ClubTime time;

  FirstStart(
      Settings settings,
      Club club,
      Accounts accounts,
      Passwords passwords,
      FirstOfficer firstOfficer,
      DemoClub demoClub,
      Watch watch,
      ClubTime time) {
    this.settings = settings;
    this.club = club;
    this.accounts = accounts;
    this.passwords = passwords;
    this.firstOfficer = firstOfficer;
    this.demoClub = demoClub;
    this.watch = watch;
    this.time = time;
  }

  @Writes
  void fill() {
    if (settings.demo()) {
      club.found("Wherrybridge Archers", true, BRACE_TABLE_TO_START_WITH);
      club.introduce(DEMO_SLIP);
      String hash = passwords.hash(DEMO_PASSWORD);
      accounts.persist(new Account("officer", hash, Role.OFFICER, time.today().plusYears(1)));
      accounts.persist(new Account("volunteer", hash, Role.VOLUNTEER, null));
      accounts.persist(new Account("committee", hash, Role.COMMITTEE, null));
      demoClub.load();
    } else {
      club.found("Our club", false, BRACE_TABLE_TO_START_WITH);
    }
    watch.begin();
  }

  /**
   * Without any account nobody could come in: a one-time code in the log lets the first officer.
   */
  void offerFirstAccount() {
    if (accounts.none()) {
      firstOfficer.offerCode();
    }
  }
}
