package club.ascham.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.test.Mock;
import jakarta.inject.Singleton;
import java.time.Clock;

/**
 * Passwords of the tests, at the least that a hash may cost: hundreds are set or mistyped, and
 * {@link PasswordsTest} holds what one costs in a club.
 */
@Mock
@Singleton
class QuickPasswords extends Passwords {
  private static final int COST = 4;

  QuickPasswords(Clock clock) {
    super(clock);
  }

  @Override
  public String hash(String password) {
    return BcryptUtil.bcryptHash(password, COST);
  }

  @Override
  public void pretendToMatch() {
    hash("nobody's password");
  }
}
