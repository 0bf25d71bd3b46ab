package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A text of the Americas with a word that Spain does not use has its own text for Spain, and that follows it when it changes. */
class SpainTextsTest {
    private static final String WHAT_TO_DO =
            "texts of Spain for %s: after a change of Spanish texts or of spain/words.tsv run"
                    + " java -cp target/test-classes:target/classes porebench.SpainTexts";

    static Iterable<Path> bundles() {
        return TextFiles.bundles();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void theTextsOfSpainAreThoseOfTheAmericasInItsWords(Path bundle) throws IOException {
        Path file = SpainTexts.ofSpain(bundle);
        Map<String, String> there = Files.exists(file) ? TextFiles.read(file) : Map.of();
        assertThat(there).as(WHAT_TO_DO, bundle).isEqualTo(new SpainTexts().of(bundle));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "El concreto fresco|El hormigón fresco",
                "AGREGADO grueso, agregados|ÁRIDO grueso, áridos",
                "la cuadrilla y el promedio|el equipo de obra y la media",
                "Según el diseño de mezcla|Según la dosificación",
                "Práctica común, sin fuente|Práctica habitual, sin fuente",
                "una fuente|una procedencia",
                "descarga de remezclas|descarga de remezclas",
                "&Carta|Gráfi&co",
                "Nueva mez&cla|Nueva dosifi&cación",
                "Tipo de me&zcla|&Tipo de dosificación"
            })
    void wordsArePutInAsPhrasesAndKeepTheirCase(String americas, String spain) throws IOException {
        assertThat(new SpainTexts().said(americas)).isEqualTo(spain);
    }
}
