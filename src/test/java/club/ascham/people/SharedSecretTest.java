package club.ascham.people;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.door.QrPath;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SharedSecretTest {
  private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z");
  private static final SharedSecret SECRET =
      SharedSecret.of("12345678901234567890".getBytes(StandardCharsets.US_ASCII));

  // RFC 4648, The Base16, Base32, and Base64 Data Encodings, section 10; we write no padding.
  @ParameterizedTest(name = "RFC 4648, section 10: {0} is {1}")
  @CsvSource({
    "f, MY",
    "fo, MZXQ",
    "foo, MZXW6",
    "foob, MZXW6YQ",
    "fooba, MZXW6YTB",
    "foobar, MZXW6YTBOI"
  })
  void base32_isAsInPrint(String text, String base32) {
    assertEquals(base32, SharedSecret.base32(text.getBytes(StandardCharsets.US_ASCII)));
  }

  @Test
  void itIsTyped_inGroupsOfFour() {
    assertEquals("GEZD GNBV GY3T QOJQ GEZD GNBV GY3T QOJQ", SECRET.typed());
  }

  @Test
  void itsAddress_namesClubAndAccount_withoutAnythingLeftToMisread() {
    assertEquals(
        "otpauth://totp/Yew%20%26%20Ash%3A%20Archers:p%C3%AFa?secret=GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ"
            + "&issuer=Yew%20%26%20Ash%3A%20Archers",
        SECRET.address("Yew & Ash: Archers", "pïa"));
  }

  @Test
  void twoAreNeverTheSame_andNoneTellsItself() {
    assertFalse(Arrays.equals(SharedSecret.fresh().bytes(), SharedSecret.fresh().bytes()));
    assertEquals(SharedSecret.BYTES, SharedSecret.fresh().bytes().length);
    assertEquals("a shared secret", SECRET.toString());
    assertArrayEquals(SECRET.bytes(), SharedSecret.of(SECRET.bytes()).bytes());
  }

  /** The library's reader is the judge: it sees the squares that our path paints. */
  @ParameterizedTest
  @ValueSource(ints = {1, 80})
  void thePicture_readsBackAsTheAddress(int lettersOfTheClub) throws Exception {
    String address = SECRET.address("É".repeat(lettersOfTheClub), "pia");
    QrPath qr = QrPath.of(address);
    int scale = 3;
    int side = qr.side() * scale;
    int[] pixels = new int[side * side];
    Arrays.fill(pixels, 0xffffff);
    Matcher run = RUN.matcher(qr.path());
    while (run.find()) {
      int x = Integer.parseInt(run.group(1)) * scale;
      int y = Integer.parseInt(run.group(2)) * scale;
      for (int row = y; row < y + scale; row++) {
        Arrays.fill(
            pixels,
            row * side + x,
            row * side + x + Integer.parseInt(run.group(3)) * scale,
            0x000000);
      }
    }
    assertEquals("", RUN.matcher(qr.path()).replaceAll(""), "the path is nothing but squares");
    assertEquals(
        address,
        new QRCodeReader()
            .decode(
                new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))),
                Map.of(DecodeHintType.PURE_BARCODE, true))
            .getText());
  }

  @Test
  void recoveryCodes_areReadHoweverTheyAreTyped() {
    RecoveryCode code = new RecoveryCode("ABCDEFGHIJKLMNOPQRSTUVWX");
    assertEquals("ABCD-EFGH-IJKL-MNOP-QRST-UVWX", code.said());
    for (String typed :
        List.of(code.said(), "abcd efgh ijkl mnop qrst uvwx", "ABCDEFGH1JKLMN0PQRSTUVWX")) {
      assertEquals(Optional.of(code), RecoveryCode.parse(typed), typed);
    }
    for (String none :
        List.of("", "123456", "ABCD", code.text() + "A", "ABCDEFGH8JKLMNOPQRSTUVWX")) {
      assertEquals(Optional.empty(), RecoveryCode.parse(none), none);
    }
  }

  @Test
  void recoveryCodes_areEight_andAllDiffer_andOnlyDigestsAreLikeDigests() {
    List<RecoveryCode> codes = RecoveryCode.fresh();
    assertEquals(RecoveryCode.HANDED_OUT, new HashSet<>(codes).size());
    for (RecoveryCode code : codes) {
      assertTrue(code.text().matches("[A-Z2-7]{24}"), code.text());
      assertEquals(64, code.digest().length());
      assertNotEquals(code.text(), code.digest());
    }
  }
}
