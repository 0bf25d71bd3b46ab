package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import porebench.NeedsProgram;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Picture;

class PictureTest {
    private static final String WORDS = "G = 0.4 % \u00B1 0.05 % air, \u03C3 and \u03BB";

    @TempDir
    Path folder;

    private static PdfPress press(String day) {
        return new PdfPress("Porebench", Clock.fixed(Instant.parse(day), ZoneOffset.UTC), ZoneOffset.UTC);
    }

    private static Picture picture(String words) {
        return new Picture("HG-30: factor by trial", 300, 200, graphics -> draw(graphics, words));
    }

    private static void draw(Graphics2D graphics, String words) {
        graphics.setColor(Color.BLACK);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 11));
        graphics.drawString(words, 20, 40);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 11));
        graphics.drawString("limits", 20, 60);
        graphics.setColor(Color.RED);
        graphics.fillOval(100, 100, 20, 20);
    }

    private Path drawn(String name, String words) {
        Path file = folder.resolve(name);
        press("2026-03-02T10:00:00Z").draw(picture(words), Locale.ENGLISH, OutputFile.fresh(file));
        return file;
    }

    @Test
    void aPngIsThePictureOnWhiteAtThreeDotsAPoint() throws IOException {
        BufferedImage image = ImageIO.read(drawn("plot.png", WORDS).toFile());
        assertThat(image.getWidth()).isEqualTo(900);
        assertThat(image.getHeight()).isEqualTo(600);
        assertThat(image.getRGB(3, 3)).isEqualTo(Color.WHITE.getRGB());
        assertThat(image.getRGB(330, 330)).isEqualTo(Color.RED.getRGB());
    }

    @Test
    void anSvgIsXmlWithItsTitleItsSizeAndItsWords() throws Exception {
        Document document = DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(drawn("plot.svg", WORDS).toFile());
        Element root = document.getDocumentElement();
        assertThat(root.getTagName()).isEqualTo("svg");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 300 200");
        assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("HG-30: factor by trial");
        assertThat(root.getElementsByTagName("desc").item(0).getTextContent().lines())
                .containsExactly(WORDS, "limits");
    }

    /** Which typefaces a machine has does not show: no letter is left to it. */
    @Test
    void theLettersOfAnSvgAreOutlines() throws Exception {
        Document document = DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(drawn("plot.svg", WORDS).toFile());
        assertThat(document.getElementsByTagName("text").getLength()).isZero();
        assertThat(Files.readString(folder.resolve("plot.svg")))
                .doesNotContain("font-family", "font-face", "@import", "href=\"http");
        assertThat(document.getElementsByTagName("path").getLength()).isPositive();
    }

    /** Another program draws the SVG as this one draws the PNG: but for the edges of lines, no dot differs. */
    @Test
    @NeedsProgram("rsvg-convert")
    void anotherProgramDrawsTheSvgAsThePng() throws Exception {
        BufferedImage own = ImageIO.read(drawn("plot.png", WORDS).toFile());
        Path other = folder.resolve("other.png");
        Process process = new ProcessBuilder(
                        "rsvg-convert",
                        "--zoom=3",
                        "--output=" + other,
                        drawn("plot.svg", WORDS).toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        BufferedImage theirs = ImageIO.read(other.toFile());
        assertThat(theirs.getWidth()).isEqualTo(own.getWidth());
        assertThat(theirs.getHeight()).isEqualTo(own.getHeight());
        assertThat(apart(own, theirs)).isLessThan(0.002);
        // A picture with other words is far more apart than that.
        BufferedImage without = ImageIO.read(drawn("less.png", "G").toFile());
        assertThat(apart(without, theirs)).isGreaterThan(0.004);
    }

    /** Returns the share of the dots of which a colour differs by more than half its range. */
    private static double apart(BufferedImage one, BufferedImage other) {
        int dots = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                Color left = new Color(one.getRGB(x, y));
                Color right = new Color(other.getRGB(x, y));
                if (Math.abs(left.getRed() - right.getRed()) > 127
                        || Math.abs(left.getGreen() - right.getGreen()) > 127
                        || Math.abs(left.getBlue() - right.getBlue()) > 127) {
                    dots++;
                }
            }
        }
        return (double) dots / (one.getWidth() * one.getHeight());
    }

    @Test
    void aPdfIsOnePageOfItsSizeWithItsWordsInAnEmbeddedTypeface() throws IOException {
        try (PDDocument document = Loader.loadPDF(drawn("plot.pdf", WORDS).toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(300);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("HG-30: factor by trial");
            assertThat(new PDFTextStripper().getText(document)).contains(WORDS, "limits");
            PDResources page = document.getPage(0).getResources();
            int fonts = 0;
            for (COSName name : page.getXObjectNames()) {
                PDResources form = ((PDFormXObject) page.getXObject(name)).getResources();
                for (COSName font : form.getFontNames()) {
                    assertThat(form.getFont(font).isEmbedded()).isTrue();
                    assertThat(form.getFont(font).getName()).contains("Roboto");
                    fonts++;
                }
            }
            assertThat(fonts).isEqualTo(2);
        }
    }

    @Test
    void whatTheTypefaceLacksIsDrawnAllTheSame() throws IOException {
        try (PDDocument document =
                Loader.loadPDF(drawn("plot.pdf", "mix \u6DF7").toFile())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("limits")
                    .doesNotContain("mix");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "svg", "pdf"})
    void theSamePictureIsTheSameFileOnAnotherDay(String ending) throws IOException {
        Path one = folder.resolve("one." + ending);
        Path other = folder.resolve("other." + ending);
        press("2026-03-02T10:00:00Z").draw(picture(WORDS), Locale.ENGLISH, OutputFile.fresh(one));
        press("2027-11-30T23:59:00Z").draw(picture(WORDS), Locale.ENGLISH, OutputFile.fresh(other));
        assertThat(other).hasSameBinaryContentAs(one);
        assertThat(new String(Files.readAllBytes(one), java.nio.charset.StandardCharsets.ISO_8859_1))
                .doesNotContain("2026", "CreationDate");
    }

    @Test
    void theEndingOfTheNameMayBeInCapitalsButMustBeKnown() {
        assertThat(drawn("PLOT.PNG", WORDS)).isNotEmptyFile();
        assertThatThrownBy(() -> drawn("plot.bmp", WORDS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("name of the file must end with .png, .svg or .pdf, but is plot.bmp");
    }

    @Test
    void saysThatAPictureCouldNotBeWritten() {
        assertThatThrownBy(() -> drawn("missing/plot.pdf", WORDS)).isInstanceOf(OutputRefused.class);
        // No file can be made in this folder of the system's.
        assertThatThrownBy(() -> drawn("/proc/self/plot.pdf", WORDS))
                .isInstanceOf(PrintException.class)
                .hasMessageContaining("Writing the picture to")
                .hasMessageContaining("plot.pdf");
    }
}
