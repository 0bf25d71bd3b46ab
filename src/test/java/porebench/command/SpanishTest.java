package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;

/** In Spanish people read Spanish and a comma; machines read what they always read. */
class SpanishTest {
    @TempDir
    Path folder;

    private Terminal english;
    private Terminal spanish;

    @BeforeEach
    void open() {
        english = new Terminal(folder);
        spanish = english.in(Locale.forLanguageTag("es"));
    }

    @Test
    void peopleReadSpanishWithADecimalComma() {
        Said said = spanish.run("air", "--reading", "5.4", "--factor", "0.3");
        assertThat(said.status()).isZero();
        assertThat(said.out())
                .contains("Lectura", "5,4  % de aire", "Contenido de aire informado", "5,1  % de aire")
                .contains("los empates al par (Apartado del informe de C231, como lo citan las entidades;")
                .doesNotContain("5.4", "Reading");
    }

    @Test
    void aNumberOfTheCommandLineHasAPointInEveryLanguage() {
        Said said = spanish.run("air", "--reading", "5,4", "--factor", "0.3");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err())
                .contains(
                        "Valor no válido para la opción '--reading': \"5,4\" debe ser un número con punto decimal, como 5.4")
                .contains("Ver \"porebench air --help\".");
    }

    @Test
    void whatIsMissingOrUnknownIsSaidInSpanish() {
        assertThat(spanish.run("bowl", "--plate", "0 g").err()).contains("Faltan opciones obligatorias:", "--empty");
        assertThat(spanish.run("air", "--reading", "5").err())
                .contains("Faltan opciones obligatorias: --factor")
                .doesNotContain("--profile");
        assertThat(spanish.run("air").err()).contains("uno de estos: ", "--full-mixture");
        assertThat(spanish.run("weigh").err()).contains("No se conoce: weigh");
    }

    @Test
    void inSpainItIsSaidWithTheWordsOfSpain() {
        Terminal spain = english.in(Locale.forLanguageTag("es-ES"));
        assertThat(spain.run("sample", "--help").out())
                .contains("Uso: porebench sample", "La dosificación.")
                .doesNotContain("mezcla");
        assertThat(spain.run("air", "--reading", "5.4", "--factor", "0.3").out())
                .contains("5,4  % de aire");
    }

    @Test
    void theHelpIsSpanishAndItsOptionsAreTheSame() {
        Said said = spanish.run("sample", "--help");
        assertThat(said.out())
                .contains("Uso: porebench sample", "--mix-id=<id>", "La mezcla.", "en % de todos los ensayos");
    }

    @Test
    void aLabBookIsSaidInSpanishButItsStatesInJsonStay() {
        Path book = folder.resolve("demo.porebench");
        assertThat(spanish.run("demo", "--book", book.toString()).out())
                .contains("Libro de laboratorio de demostración escrito en", "Fuentes ");
        assertThat(spanish.on("2026-11-25")
                        .in(Locale.forLanguageTag("es"))
                        .run("register", "--book", book.toString())
                        .out())
                .contains("vencido", "Vigente hasta", "La fuente S-09 cambió después de emitir el factor");
        String json = spanish.json("register", "--book", book.toString()).out();
        assertThat(json).contains("\"state\":\"in force\"", "\"factorPercent\":0.3");
    }

    @Test
    void onlyTheMessagesOfAnAnswerInJsonAreSpanish() {
        String[] asked = {"meter", "--calibration", demoSheet("meter-calibration.csv"), "--meter-id", "A-1"};
        Map<String, Object> said = new HashMap<>(spanish.json(asked).json());
        Map<String, Object> before = new HashMap<>(english.json(asked).json());
        assertThat(String.valueOf(said.remove("problems")))
                .contains("meter.calibration-overdue", "La calibración del medidor A-1 venció el 2026-06-30");
        before.remove("problems");
        assertThat(said).containsKey("state").isEqualTo(before);
    }

    @Test
    void sheetsAreTheSameInEveryLanguage() throws IOException {
        Path book = folder.resolve("demo.porebench");
        spanish.run("demo", "--book", book.toString());
        spanish.run("export", "--book", book.toString(), folder.resolve("es").toString());
        english.run("export", "--book", book.toString(), folder.resolve("en").toString());
        List<Path> sheets;
        try (Stream<Path> files = Files.list(folder.resolve("en"))) {
            sheets = files.sorted().toList();
        }
        assertThat(sheets).hasSizeGreaterThan(5);
        for (Path sheet : sheets) {
            assertThat(folder.resolve("es").resolve(sheet.getFileName())).hasSameTextualContentAs(sheet);
        }
    }

    private static String demoSheet(String name) {
        return Path.of("demo-data").resolve(name).toAbsolutePath().toString();
    }
}
