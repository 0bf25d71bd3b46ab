package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileNamesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "HG-101, HG-101",
        "K7/1, K7-1",
        "'a:b*c?d\"e<f>g|h\\i', a-b-c-d-e-f-g-h-i",
        "' M. Ash ', M.-Ash",
        "Árido nº 3, Árido-nº-3",
        "砂 7, 砂-7",
        "../../etc, etc",
        "-rf, rf",
        "'x. ', x"
    })
    void whatASystemRefusesBecomesAHyphen(String name, String part) {
        assertThat(FileNames.part(name)).isEqualTo(part);
    }

    /** Typed in two ways, it is one name of a file. */
    @Test
    void aLetterWithItsAccentApartIsOneLetter() {
        assertThat(FileNames.part("A\u0301rido")).isEqualTo("\u00c1rido");
    }

    @ParameterizedTest
    @ValueSource(strings = {"con", "NUL.pdf", "com1.csv", "LPT9", "aux.tar.gz", "COM\u00b9.pdf"})
    void theNameOfADeviceGetsALineBefore(String name) {
        assertThat(FileNames.safe(name)).isEqualTo("_" + name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"console.pdf", "com10.pdf", "nullah.pdf", "HG-101.pdf"})
    void whatOnlyBeginsLikeADeviceStays(String name) {
        assertThat(FileNames.safe(name)).isEqualTo(name);
    }

    @Test
    void nothingLeftIsNamedAfterTheProgram() {
        assertThat(FileNames.safe("???.pdf")).isEqualTo("porebench.pdf");
        assertThat(FileNames.safe("")).isEqualTo("porebench");
        assertThat(FileNames.safe("x.")).isEqualTo("x");
    }

    /** 180 bytes are 90 letters of two bytes and 45 of four. */
    @Test
    void aLongNameIsCutBetweenLettersAndKeepsItsEnding() throws Exception {
        assertThat(FileNames.safe("é".repeat(200) + ".pdf")).isEqualTo("é".repeat(90) + ".pdf");
        String wide = FileNames.safe("\ud842\udfb7".repeat(100) + ".pdf");
        assertThat(wide).isEqualTo("\ud842\udfb7".repeat(45) + ".pdf");
        assertThat(Files.writeString(folder.resolve(wide), "", StandardCharsets.UTF_8))
                .exists();
    }

    @Test
    void aDayStandsBeforeTheEndingOnce() {
        LocalDate day = LocalDate.of(2026, 11, 29);
        assertThat(FileNames.dated("K7-by-trial.png", day)).isEqualTo("K7-by-trial-2026-11-29.png");
        assertThat(FileNames.dated("factor-register-2026-11-29", day)).isEqualTo("factor-register-2026-11-29");
        assertThat(FileNames.dated("K7", day)).isEqualTo("K7-2026-11-29");
    }
}
