package club.ascham.door;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * A QR code as one SVG path of unit squares, with the four squares of quiet around it that readers
 * want.
 *
 * <p>A code and not only text, since few people type 32 letters right. Of the library its encoder
 * alone; the squares are one path of SVG.
 *
 * @param side of the whole picture, in squares
 */
public record QrPath(int side, String path) {
  private static final int QUIET = 4;

  public static QrPath of(String text) {
    ByteMatrix squares = squares(text);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < squares.getHeight(); y++) {
      for (int x = 0; x < squares.getWidth(); x++) {
        int run = x;
        while (run < squares.getWidth() && squares.get(run, y) == 1) {
          run++;
        }
        if (run > x) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET);
          path.append('h').append(run - x).append("v1h-").append(run - x).append('z');
          x = run;
        }
      }
    }
    return new QrPath(squares.getWidth() + 2 * QUIET, path.toString());
  }

  private static ByteMatrix squares(String text) {
    try {
      return Encoder.encode(
              text,
              ErrorCorrectionLevel.L,
              Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name()))
          .getMatrix();
    } catch (WriterException tooLong) {
      throw new IllegalArgumentException("does not fit a QR code", tooLong);
    }
  }
}
