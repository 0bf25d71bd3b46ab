package porebench.print.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class InkTest {
    private PDDocument document;
    private Faces faces;
    private Ink ink;

    @BeforeEach
    void open() throws IOException {
        document = new PDDocument();
        faces = Typefaces.read().in(document);
        ink = Ink.ofPage(faces);
    }

    @AfterEach
    void close() throws IOException {
        faces.close();
        document.close();
    }

    private String written() {
        return new String(ink.bytes(), StandardCharsets.ISO_8859_1);
    }

    /** Rounded to the hundredth, half a hundredth up, zeros at the end left out. */
    @Test
    void numbersHaveTwoDecimalsAtMost() {
        ink.line(0, -0.004, 10.1, -123.456, 0.05);
        ink.line(1e6, 0.995, 0.005, -0.05, 0.05);
        assertThat(written()).isEqualTo("0.05 w\n0 0 m 10.1 -123.46 l\n1000000 1 m 0.01 -0.05 l\nS\n");
    }

    /** Roboto's numbers of letters are its own, so that only what is around them is told here; places are given from the one before. */
    @Test
    void typeThicknessAndGreyAreSetOnceAndAfterRestoreAsBefore() {
        ink.text("a", Weight.BOLD, 9, 10, 20, true);
        ink.text("a", Weight.BOLD, 9, 12.5, 8, true);
        ink.save();
        ink.text("a", Weight.REGULAR, 9, 1, 2, true);
        ink.restore();
        ink.text("a", Weight.BOLD, 9, 1, 2, true);
        ink.shade(1, 2, 3, 4, 0.8);
        ink.shade(5, 6, 7, 8, 0.8);
        ink.text("a", Weight.BOLD, 9.5, 1, 2, true);
        assertThat(written().replaceAll("\\((.|\n)*?\\)", "()"))
                .isEqualTo("BT\n/B 9 Tf\n10 20 Td()Tj\n2.5 -12 Td()Tj\nET\n"
                        + "q\nBT\n/R 9 Tf\n1 2 Td()Tj\nET\nQ\n"
                        + "BT\n1 2 Td()Tj\nET\n0.8 g\n1 2 3 4 re\n5 6 7 8 re\nf\n"
                        + "0 g\nBT\n/B 9.5 Tf\n1 2 Td()Tj\nET\n");
    }

    /** One after the other, each is drawn before anything else begins: a line over a grey must not come under it. */
    @Test
    void whatIsDrawnTogetherIsOfOneKind() {
        ink.shade(1, 1, 2, 2, 0.5);
        ink.line(1, 1, 2, 2, 1);
        ink.corners(1, true, 0, 0, 1, 1, 2, 0);
        ink.frame(3, 3, 4, 4, 1);
        ink.frame(3, 3, 4, 4, 2);
        ink.dot(0, 0, 1);
        ink.shade(1, 1, 2, 2, 0);
        ink.part("/X1 ", 0);
        ink.shade(1, 1, 2, 2, 0);
        ink.part("/X1 ", 2.5);
        assertThat(written())
                .isEqualTo("0.5 g\n"
                        + "1 1 2 2 re\n"
                        + "f\n"
                        + "1 w\n"
                        + "1 1 m 2 2 l\n"
                        + "0 0 m 1 1 l 2 0 l h\n"
                        + "3 3 4 4 re\n"
                        + "S\n"
                        + "2 w\n"
                        + "3 3 4 4 re\n"
                        + "S\n"
                        + "0 g\n"
                        + "1 0 m 1 0.55 0.55 1 0 1 c -0.55 1 -1 0.55 -1 0 c -1 -0.55 -0.55 -1 0 -1 c 0.55 -1 1"
                        + " -0.55 1 0 c 1 1 2 2 re\n"
                        + "f\n"
                        + "/X1 Do\n"
                        + "1 1 2 2 re\n"
                        + "f\n"
                        + "q\n"
                        + "1 0 0 1 0 2.5 cm\n"
                        + "/X1 Do\n"
                        + "Q\n");
    }

    @Test
    void whatMovesNothingIsNotWritten() {
        ink.translate(0, 0.001);
        ink.scale(1);
        ink.translate(1, 0);
        ink.scale(1.25);
        assertThat(written()).isEqualTo("1 0 0 1 1 0 cm\n1.25 0 0 1.25 0 0 cm\n");
    }

    /** Some of their numbers in the typeface hold brackets, strokes and line ends, which would end a text or be read as others. */
    @Test
    void everyLetterIsReadBackAsItWas() throws IOException {
        String letters = IntStream.range(0x21, 0x2200)
                        .filter(faces::shows)
                        .filter(Character::isLetterOrDigit)
                        .mapToObj(Character::toString)
                        .collect(Collectors.joining())
                + "()\\+-";
        assertThat(letters.length()).isGreaterThan(500);
        PDPage page = new PDPage(new PDRectangle(300, 20_000));
        document.addPage(page);
        for (Weight weight : Weight.values()) {
            for (int from = 0; from < letters.length(); from += 20) {
                String line = letters.substring(from, Math.min(letters.length(), from + 20));
                ink.text(line, weight, 9, 10, 19_900 - 20 * from / 2.0 - (weight == Weight.BOLD ? 9_900 : 0), true);
            }
        }
        faces.finish(page, ink);
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        document.save(pdf);
        try (PDDocument read = Loader.loadPDF(pdf.toByteArray())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setLineSeparator("");
            stripper.setParagraphEnd("");
            stripper.setPageEnd("");
            String text = stripper.getText(read).replaceAll("\\s", "");
            assertThat(text)
                    .isEqualTo(java.text.Normalizer.normalize(letters + letters, java.text.Normalizer.Form.NFC));
        }
    }

    @Test
    void aPartIsMadeTheSecondTimeItIsNeededAndNoMoreThan2000Are() throws IOException {
        Parts parts = new Parts(new PDResources());
        PDFormXObject drawn = new PDFormXObject(new PDStream(document));
        for (int key = 0; key < 2000; key++) {
            assertThat(parts.find(key)).isEmpty();
            assertThat(parts.isDue(key)).as("first time").isFalse();
            assertThat(parts.isDue(key)).as("second time").isTrue();
            assertThat(parts.keep(key, 12.5, drawn)).isEqualTo(new Parts.Part("/X" + (key + 1) + " ", 12.5));
            assertThat(parts.find(key)).hasValue(new Parts.Part("/X" + (key + 1) + " ", 12.5));
        }
        parts.isDue("one more");
        assertThat(parts.isDue("one more")).isFalse();
    }

    /** What was needed once long ago is forgotten: it would have to be kept for every card of a large file. */
    @Test
    void whatWasNeededOnceIsForgottenAfterFiveThousandOthers() {
        Parts parts = new Parts(new PDResources());
        parts.isDue("first");
        for (int key = 0; key < 5000; key++) {
            parts.isDue(key);
        }
        assertThat(parts.isDue("first")).isFalse();
    }
}
