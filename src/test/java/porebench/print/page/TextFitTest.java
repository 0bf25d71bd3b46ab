package porebench.print.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TextFitTest {
    private PDDocument document;
    private Faces faces;

    @BeforeEach
    void open() throws IOException {
        document = new PDDocument();
        faces = Typefaces.read().in(document);
    }

    @AfterEach
    void close() throws IOException {
        document.close();
    }

    @Test
    void aShortTextIsSetAsLargeAsItMayBe() throws IOException {
        FittedText fitted = new TextFit(Weight.BOLD, 14, 6, 200, 2).fit(faces, "TW-214");
        assertThat(fitted).isEqualTo(new FittedText(java.util.List.of("TW-214"), Weight.BOLD, 14, false));
        assertThat(fitted.height()).isEqualTo(14 * 1.2);
    }

    @Test
    void aLongerTextIsWrappedThenShrunk() throws IOException {
        TextFit place = new TextFit(Weight.REGULAR, 10, 6, 100, 2);
        assertThat(place.fit(faces, "aggregate correction factor").lines())
                .containsExactly("aggregate correction", "factor");
        FittedText shrunk = place.fit(faces, "aggregate correction factor of the mix in force");
        assertThat(shrunk.size()).isBetween(6.0, 9.75);
        assertThat(String.join(" ", shrunk.lines())).isEqualTo("aggregate correction factor of the mix in force");
        assertThat(shrunk.cut()).isFalse();
    }

    @Test
    void wordsBreakAfterHyphensBetweenLettersButNotInRangesOfNumbers() throws IOException {
        TextFit place = new TextFit(Weight.REGULAR, 10, 10, 70, 9);
        assertThat(place.fit(faces, "Oakenthwaite-Feather").lines()).containsExactly("Oakenthwaite-", "Feather");
        assertThat(place.fit(faces, "crushed stone 5-20 mm").lines()).doesNotContain("crushed stone 5-");
    }

    @Test
    void aWordWiderThanItsPlaceIsBrokenOnlyAtLast() throws IOException {
        FittedText fitted = new TextFit(Weight.REGULAR, 10, 6, 30, 3).fit(faces, "ABCDEFGHIJKL");
        assertThat(String.join("", fitted.lines())).isEqualTo("ABCDEFGHIJKL");
        assertThat(fitted.lines().size()).isBetween(2, 3);
    }

    @Test
    void whatCannotFitEndsInAnEllipsis() throws IOException {
        TextFit place = new TextFit(Weight.REGULAR, 10, 6, 40, 2);
        FittedText fitted = place.fit(faces, "x".repeat(500));
        assertThat(fitted.cut()).isTrue();
        assertThat(fitted.lines()).hasSize(2);
        assertThat(fitted.lines().get(1)).endsWith("\u2026");
        assertThat(faces.width(fitted.lines().get(1), Weight.REGULAR, 6)).isLessThanOrEqualTo(40);
    }

    @Test
    void anEmptyTextIsOneEmptyLine() throws IOException {
        assertThat(new TextFit(Weight.REGULAR, 10, 6, 40, 2).fit(faces, " \t ").lines())
                .containsExactly("");
    }

    // A combining accent joins its letter where the typeface has both in one; an emoji is one missing character, not
    // two.
    @Test
    void printableTextIsComposedAndHasNoControlCharacters() {
        assertThat(faces.printable("  a\u0308\u0000b\r\nc\u200d  d ")).isEqualTo("\u00e4 b c d");
        assertThat(faces.printable("\ud83d\ude00")).isEqualTo("\uFFFD");
        assertThat(faces.printable("\ud83d")).isEqualTo("\uFFFD");
    }
}
