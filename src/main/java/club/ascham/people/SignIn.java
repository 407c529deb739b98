package club.ascham.people;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;

/** Turns a name and password (or access key), or a session cookie, into an account that acts. */
final class SignIn {
  static final String ACCOUNT = "account";

  private SignIn() {}

  private static SecurityIdentity identityOf(Accounts.Credentials account) {
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(new QuarkusPrincipal(account.name()))
        .addRole(account.role().name())
        .addAttribute(ACCOUNT, account)
        .build();
  }

  @ApplicationScoped
  static class ByPassword implements IdentityProvider<UsernamePasswordAuthenticationRequest> {
    private final Accounts accounts;
    private final Passwords passwords;

    ByPassword(Accounts accounts, Passwords passwords) {
      this.accounts = accounts;
      this.passwords = passwords;
    }

    @Override
    public Class<UsernamePasswordAuthenticationRequest> getRequestType() {
      return UsernamePasswordAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
        UsernamePasswordAuthenticationRequest request, AuthenticationRequestContext context) {
      return context.runBlocking(
          () -> identify(request.getUsername(), new String(request.getPassword().getPassword())));
    }

    private SecurityIdentity identify(String name, String secret) {
      Accounts.Credentials account = accounts.named(name).orElse(null);
      if (account == null) {
        passwords.pretendToMatch(secret);
        throw new AuthenticationFailedException();
      }
      boolean byKey =
          account.accessKeyHash() != null
              && account.accessKeyHash().equals(Passwords.digest(secret));
      if (!byKey && !passwords.matches(secret, account.passwordHash())) {
        throw new AuthenticationFailedException();
      }
      return identityOf(account);
    }
  }

  @ApplicationScoped
  static class ByCookie implements IdentityProvider<TrustedAuthenticationRequest> {
    private final Accounts accounts;

    ByCookie(Accounts accounts) {
      this.accounts = accounts;
    }

    @Override
    public Class<TrustedAuthenticationRequest> getRequestType() {
      return TrustedAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
        TrustedAuthenticationRequest request, AuthenticationRequestContext context) {
      return context.runBlocking(
          () ->
              accounts
                  .named(request.getPrincipal())
                  .map(SignIn::identityOf)
                  .orElseThrow(AuthenticationFailedException::new));
    }
  }
}
