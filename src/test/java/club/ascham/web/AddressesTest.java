package club.ascham.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AddressesTest {

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "/find?q=a+b%20c|/find?q=a+b%20c",
        "/find?q=a;b|/find?q=a%3Bb",
        "/find?q=a,b|/find?q=a%2Cb",
        "/find?q=a\\b|/find?q=a%5Cb",
        "/find?q=%22\"|/find?q=%22%22",
        "/find?q=é|/find?q=%C3%A9",
        "/find?q=a b|/find?q=a%20b"
      })
  void everyAddress_hasASpellingThatACookieHolds(String address, String plain) {
    assertEquals(plain, Addresses.plain(address));
    assertTrue(Addresses.isPlain(plain));
    assertEquals(address.equals(plain), Addresses.isPlain(address));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "text/html|true",
        "*/*|true",
        "text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,*/*;q=0.8|true",
        "application/signed-exchange;v=b3;q=0.7|true",
        "application/json, text/plain;q=0.001|true",
        "*|false",
        "text/html, *; q=.2|false",
        "a;b;c|false",
        "text/html;q=x|false",
        "text/html;q=7|false",
        "text/|false"
      })
  void aWish_namesKindsOrNone(String wish, boolean named) {
    assertEquals(named, Addresses.namesKinds(wish));
  }
}
