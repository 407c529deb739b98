package club.ascham.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.time.TestClock;
import org.junit.jupiter.api.Test;

/** The club's own hash, which the tests of pages do without. */
class PasswordsTest {
  private final Passwords passwords = new Passwords(TestClock.running());

  @Test
  void aPassword_isKeptAsBcryptAtACostOfTwelve_andMatchesAlone() {
    String hash = passwords.hash("brisk violet ladders 41");
    assertEquals("$2a$12$", hash.substring(0, 7));
    assertTrue(passwords.matches("brisk violet ladders 41", hash));
    assertTrue(!passwords.matches("brisk violet ladders 42", hash));
  }
}
