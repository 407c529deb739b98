package club.ascham.door;

import club.ascham.people.Accounts;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;

/** Someone signed in, for tests that ask a use case without any request. */
@ApplicationScoped
public class SignedIn {
  private final Accounts accounts;

  SignedIn(Accounts accounts) {
    this.accounts = accounts;
  }

  public SecurityIdentity as(String name) {
    return Identities.identityOf(accounts.named(name).orElseThrow());
  }
}
