package club.ascham.door;

import club.ascham.people.Account;
import club.ascham.people.Accounts;
import club.ascham.people.Passwords;
import club.ascham.people.Role;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.logging.Logger;

/** Makes the first account of a new club, for whoever can read the server's log. */
@ApplicationScoped
public class FirstOfficer {
  private static final Logger LOG = Logger.getLogger(FirstOfficer.class);

  private final Accounts accounts;
  private final Passwords passwords;
  private final Story story;
  private final ClubTime time;
  private final AtomicReference<String> code = new AtomicReference<>();

  FirstOfficer(Accounts accounts, Passwords passwords, Story story, ClubTime time) {
    this.accounts = accounts;
    this.passwords = passwords;
    this.story = story;
    this.time = time;
  }

  public void offerCode() {
    code.set(passwords.secret());
    LOG.infof("No account yet. Open /first-officer and give this one-time code: %s", code.get());
  }

  boolean isOffered() {
    return code.get() != null;
  }

  boolean knows(String given) {
    String offered = code.get();
    return offered != null
        && MessageDigest.isEqual(
            offered.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Spends the code; false: somebody was quicker with it, and nothing is made. The first officer
   * holds the permit for a year, then an officer renews it.
   */
  @Writes
  boolean create(String given, String name, String password) {
    if (!knows(given)) {
      return false;
    }
    accounts.persist(
        new Account(name, passwords.hash(password), Role.OFFICER, time.today().plusYears(1)));
    story.tell(null, "Made the first officer's account.");
    code.set(null);
    return true;
  }
}
