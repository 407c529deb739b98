package club.ascham.door;

import club.ascham.people.Accounts;
import club.ascham.people.Actor;
import club.ascham.people.Session;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Turns what a request carries into an account that acts: one statement for a session's request.
 */
final class Identities {
  private Identities() {}

  private static SecurityIdentity identityOf(Accounts.Credentials account, Session session) {
    return QuarkusSecurityIdentity.builder(identityOf(account))
        .addAttribute(Actor.SESSION, session)
        .build();
  }

  static SecurityIdentity identityOf(Accounts.Credentials account) {
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(new QuarkusPrincipal(account.name()))
        .addRole(account.role().name())
        .addAttribute(Actor.ACCOUNT, account)
        .build();
  }

  /** For programs, which send name and secret each time. */
  @ApplicationScoped
  static class ByPassword implements IdentityProvider<UsernamePasswordAuthenticationRequest> {
    private final SignIn signIn;

    ByPassword(SignIn signIn) {
      this.signIn = signIn;
    }

    @Override
    public Class<UsernamePasswordAuthenticationRequest> getRequestType() {
      return UsernamePasswordAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
        UsernamePasswordAuthenticationRequest given, AuthenticationRequestContext context) {
      RoutingContext request = HttpSecurityUtils.getRoutingContextAttribute(given);
      return context.runBlocking(
          () ->
              identify(
                  given.getUsername(), new String(given.getPassword().getPassword()), request));
    }

    private SecurityIdentity identify(String name, String secret, RoutingContext request) {
      SignIn.Outcome outcome = signIn.attempt(name, secret, Visit.of(request));
      if (outcome instanceof SignIn.Outcome.In in) {
        return identityOf(in.account());
      }
      if (outcome instanceof SignIn.Outcome.Wait wait) {
        BasicPassword.mustWait(request, wait.length());
      }
      throw new AuthenticationFailedException();
    }
  }

  /** For people, whose browser carries a session. */
  @ApplicationScoped
  static class BySession implements IdentityProvider<TrustedAuthenticationRequest> {
    private final SignIn signIn;

    BySession(SignIn signIn) {
      this.signIn = signIn;
    }

    @Override
    public Class<TrustedAuthenticationRequest> getRequestType() {
      return TrustedAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
        TrustedAuthenticationRequest carried, AuthenticationRequestContext context) {
      return context.runBlocking(
          () ->
              Session.parse(carried.getPrincipal())
                  .flatMap(
                      session ->
                          signIn.continued(session).map(account -> identityOf(account, session)))
                  .orElseThrow(AuthenticationFailedException::new));
    }
  }
}
