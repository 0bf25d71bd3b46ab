package porebench.print.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.NeedsProgram;
import porebench.print.code.CodePicture;

/** The codes of squares that the page draws itself, read back by ZXing, which shares nothing with them. */
@NeedsProgram("chromium")
class SquaresBrowserTest {
    @TempDir
    Path folder;

    private static BufferedImage picture(String rows) {
        String[] lines = rows.split("\\|");
        int size = lines.length + 8;
        BufferedImage picture = new BufferedImage(size * 4, size * 4, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, size * 4, size * 4);
        pen.setColor(Color.BLACK);
        for (int y = 0; y < lines.length; y++) {
            for (int x = 0; x < lines.length; x++) {
                if (lines[y].charAt(x) == '1') {
                    pen.fillRect((x + 4) * 4, (y + 4) * 4, 4, 4);
                }
            }
        }
        pen.dispose();
        return picture;
    }

    @Test
    void everySizeFullAndWithOneByteIsReadByAnotherProgram() throws Exception {
        String squares;
        try (InputStream stream =
                Objects.requireNonNull(PhoneFile.class.getResourceAsStream("/porebench/print/phone/squares.js"))) {
            squares = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        try (Browser browser = new Browser(folder)) {
            browser.ask("(() => { " + squares
                    + " window.squares = squares; window.capacity = capacity; window.codewords = codewords; })()");
            // ISO/IEC 18004, table of symbols, level M (recalled): bytes in versions 1, 7, 10, 15 and 20.
            assertThat(browser.ask("[1, 7, 10, 15, 20].map(capacity).join()")).isEqualTo("14,122,213,412,666");
            for (int version = 1; version <= 20; version++) {
                for (String length :
                        List.of("capacity(" + version + ")", "Math.max(1, capacity(" + (version - 1) + ") + 1 || 1)")) {
                    String answer = browser.ask("(() => { const n = " + length + ";"
                            + " const bytes = Array.from({length: n}, (x, i) => 33 + (i * 7 + n) % 90);"
                            + " return squares(bytes).map(row => row.map(d => d ? 1 : 0).join('')).join('|')"
                            + " + ' ' + String.fromCharCode(...bytes); })()");
                    int gap = answer.indexOf(' ');
                    String rows = answer.substring(0, gap);
                    assertThat(rows.split("\\|")).as("version %s", version).hasSize(17 + 4 * version);
                    assertThat(CodePicture.texts(picture(rows)))
                            .as("version %s", version)
                            .containsExactly(answer.substring(gap + 1));
                }
            }
            assertThat(browser.ask("squares(new Array(667).fill(65))")).isEqualTo("null");
        }
    }
}
