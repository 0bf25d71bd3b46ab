package porebench.exchange.whole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A cell of a whole export holds any text an older lab book may hold, on one line. */
class WholeCellTest {
    @Test
    void everyCharacterComesBackAndNoneBreaksTheLine() {
        for (int character = 0; character <= Character.MAX_VALUE; character++) {
            String text = "a" + (char) character + "b";
            String cell = WholeCell.written(text);
            assertThat(WholeCell.read(cell)).as("U+%04X", character).contains(text);
            assertThat(cell.chars()).as("U+%04X", character).noneMatch(each -> each < ' ' || each == 0x7F);
        }
    }

    @Test
    void aControlCharacterIsFourHexadecimalDigits() {
        assertThat(WholeCell.written("a\u0001\nb")).isEqualTo("a\\u0001\\u000Ab");
        assertThat(WholeCell.read("a\\u000ab")).isEmpty();
    }

    /** A blank is a letter on a line like any other; the last two characters of the alphabet are none. */
    @Test
    void onlyWhatIsNoLetterIsWrittenAsDigits() {
        assertThat(WholeCell.written("a b~")).isEqualTo("a b~");
        assertThat(WholeCell.written("\u007F")).isEqualTo("\\u007F");
        assertThat(WholeCell.written("\uFFFD\uFFFE\uFFFF")).isEqualTo("\uFFFD\\uFFFE\\uFFFF");
    }

    /** Nobody wrote a letter as digits here: the cell was changed. */
    @Test
    void aTextThatWouldHaveBeenWrittenOtherwiseIsNotRead() {
        assertThat(WholeCell.read("\\u0041")).isEmpty();
        assertThat(WholeCell.read("\\u0001")).contains("\u0001");
    }
}
