package porebench.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.paper.SheetCode;
import porebench.evidence.paper.TrialSheet;
import porebench.port.Paper;
import porebench.print.Presses;
import porebench.print.Sheets;
import porebench.record.id.MixId;

/** The code on the printed sheet, read back from the picture of the page as a reader at the bench does. */
class SheetCodeTest {
    private static final int DOTS_PER_INCH = 150;

    static Stream<TrialSheet> sheets() {
        return Stream.of(Sheets.usual(3), Sheets.typeA(3), Sheets.training(3), Sheets.everythingLong(12));
    }

    private static String read(BufferedImage page) throws ReaderException {
        int width = page.getWidth();
        int height = page.getHeight();
        int[] dots = page.getRGB(0, 0, width, height, null, 0, width);
        return new QRCodeReader()
                .decode(
                        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots))),
                        Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void theCodeOnTheFirstPageNamesTheMix(TrialSheet sheet) throws Exception {
        for (Paper paper : new Paper[] {Paper.A4, Paper.LETTER}) {
            BufferedImage page = Presses.PRESS
                    .preview(sheet, paper, Locale.ENGLISH, DOTS_PER_INCH)
                    .get(0);
            assertThat(SheetCode.mix(read(page))).contains(sheet.mix().id());
        }
    }

    @Test
    void aCodeOfSomethingElseNamesNoMix() {
        assertThat(SheetCode.mix("4006381333931")).isEqualTo(Optional.empty());
        assertThat(SheetCode.mix("PBMIX:")).isEmpty();
        assertThat(SheetCode.mix(" " + SheetCode.of(new MixId("TW 214")) + "\n"))
                .contains(new MixId("TW 214"));
    }
}
