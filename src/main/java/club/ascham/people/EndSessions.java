package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Ends every session of an account, in whatever browser: the next request asks for the password.
 */
@ApplicationScoped
class EndSessions {
  private final Rows rows;

  EndSessions(Rows rows) {
    this.rows = rows;
  }

  @Writes
  void of(AccountId account) {
    rows.change(
        "INSERT INTO sessions_ended (account_id, times) VALUES (?1, 1)"
            + " ON CONFLICT (account_id) DO UPDATE SET times = times + 1",
        account);
  }
}
