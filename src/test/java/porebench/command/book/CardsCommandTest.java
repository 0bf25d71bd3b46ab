package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.MixDesign;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** Cards by the command line, of a lab book with one factor in force; the day is 1 July 2026. */
class CardsCommandTest {
    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void begin() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2027-06-10"));
        assertThat(terminal.json("import", "--book", "lab.book", "issues.csv").status())
                .isZero();
        try (LabBook book = book()) {
            Version<FactorIssue> version =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue issue = version.value();
            book.keep(
                    List.of(Draft.correcting(version, issue.on(issue.grounds().from(FactorOrigin.CONFIRMED)))),
                    "Ada Test",
                    "looked at");
        }
    }

    private LabBook book() {
        return new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"));
    }

    private static String[] with(String command, String... more) {
        List<String> arguments = new ArrayList<>(List.of(command, "--book", "lab.book"));
        arguments.addAll(List.of(more));
        return arguments.toArray(String[]::new);
    }

    private Said cards(String... more) {
        return terminal.json(with("cards", more));
    }

    private String text(String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void cardsOfAllMixesInForceAreWrittenAndRecorded() throws IOException {
        Said said = cards("--out", "all.pdf", "--who", "Ada");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsEntry("cardsMade", 1)
                .containsEntry("paper", "A6")
                .containsEntry("language", "en")
                .containsEntry("path", folder.resolve("all.pdf").toString());
        assertThat(said.list("cards"))
                .singleElement()
                .satisfies(card -> assertThat(card)
                        .containsEntry("card", "M-1/r1/1")
                        .containsEntry("mixId", "M-1")
                        .containsEntry("revision", 1)
                        .containsEntry("number", 1)
                        .containsEntry("recheckBy", "2027-06-10")
                        .containsEntry("state", "in-force"));
        assertThat(text("all.pdf")).contains("M-1", "SUBTRACT");
        try (LabBook book = book()) {
            Version<CardPrint> print = book.latest(CardPrint.class, "M-1/r1/1").orElseThrow();
            assertThat(print.stamp().who()).isEqualTo("Ada");
            assertThat(print.stamp().why()).isEqualTo("Cards printed from the command line");
        }
    }

    @Test
    void saysInWordsWhatItMade() {
        Said said = terminal.in(Locale.forLanguageTag("es")).run(with("cards", "--out", "all.pdf"));
        assertThat(said.out()).contains("Tarjetas escritas: 1", "M-1/r1/1", "0,4");
    }

    @Test
    void languagesSizesAndSheetsAreThoseAskedFor() throws IOException {
        assertThat(cards("--out", "two.pdf", "--language", "fr+DE", "--paper", "wallet", "--sheet", "letter")
                        .json())
                .containsEntry("language", "fr+de")
                .containsEntry("paper", "wallet");
        assertThat(text("two.pdf")).contains("ABZIEHEN", "SOUSTRAIRE");
        assertThat(cards("--out", "one.pdf", "--sheet", "A4", "--per-sheet", "1")
                        .status())
                .isZero();
        try (LabBook book = book()) {
            assertThat(book.latest(CardPrint.class))
                    .extracting(print -> print.value().paper())
                    .containsExactly("wallet fr+de on letter", "A6 on A4");
        }
    }

    @Test
    void aSingleCardHasALanguageOfItsOwnToo() throws IOException {
        assertThat(terminal.json(with("card", "--mix-id", "M-1", "--out", "de.pdf", "--language", "de"))
                        .status())
                .isZero();
        assertThat(text("de.pdf")).contains("ABZIEHEN").doesNotContain("SUBTRACT");
        assertThat(terminal.json(with("card", "--mix-id", "M-1", "--out", "both.pdf", "--language", "en+es-419"))
                        .json())
                .containsEntry("paper", "A6 en+es-419");
        assertThat(text("both.pdf")).contains("SUBTRACT", "RESTAR");
        assertThat(terminal.json(with("card", "--mix-id", "M-1", "--out", "x.pdf", "--language", "en+en"))
                        .codes())
                .containsExactly("cards.languages");
    }

    @Test
    void refusesWithWordsAndWritesNothing() {
        assertThat(cards("--out", "x.pdf", "--language", "en+de+fr", "--per-sheet", "2")
                        .codes())
                .containsExactly("cards.languages", "cards.no-sheet");
        assertThat(cards("--out", "x.pdf", "--sheet", "A4", "--per-sheet", "0").codes())
                .containsExactly("command.not-positive");
        assertThat(cards("--out", "x.pdf", "--mix-id", "M-1", "--mix-id", "M-9").codes())
                .containsExactly("book.not-there");
        assertThat(cards("--out", "x.pdf", "--plant", "North", "--recall").codes())
                .containsExactly("cards.no-plant", "cards.none-recalled");
        assertThat(cards("--out", "x.pdf", "--language", "it").status()).isEqualTo(2);
        assertThat(folder.resolve("x.pdf")).doesNotExist();
        Said some = cards("--out", "x.pdf", "--mix-id", "M-9", "--mix-id", "M-1", "--leave-out");
        assertThat(some.status()).isZero();
        assertThat(some.codes()).containsExactly("book.not-there");
        assertThat(Files.exists(folder.resolve("x.pdf"))).isTrue();
    }

    /** The chart stands on a page behind the card, and the paper that is recorded names it. */
    @Test
    void cardsHaveAChartOnTheirBacksWhereItIsAskedFor() throws IOException {
        assertThat(cards("--out", "charts.pdf", "--chart").status()).isZero();
        Said one = terminal.json(with("card", "--mix-id", "M-1", "--out", "chart.pdf", "--chart"));
        assertThat(one.status()).isZero();
        assertThat(one.json()).containsEntry("paper", "A6 with chart");
        for (String file : List.of("charts.pdf", "chart.pdf")) {
            assertThat(text(file)).contains("Lay a ruler from the dot");
            try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
                assertThat(document.getNumberOfPages()).isEqualTo(2);
            }
        }
        try (LabBook book = book()) {
            assertThat(book.latest(CardPrint.class, "M-1/r1/1")
                            .orElseThrow()
                            .value()
                            .paper())
                    .isEqualTo("A6 with chart");
        }
    }

    @Test
    void aChartOnAWalletCardIsRefusedAndNothingIsRecorded() {
        assertThat(cards("--out", "x.pdf", "--paper", "wallet", "--chart").codes())
                .containsExactly("card.chart-too-fine");
        Said one = terminal.json(with("card", "--mix-id", "M-1", "--out", "x.pdf", "--paper", "wallet", "--chart"));
        assertThat(one.status()).isEqualTo(1);
        assertThat(one.codes()).containsExactly("card.chart-too-fine");
        assertThat(folder.resolve("x.pdf")).doesNotExist();
        try (LabBook book = book()) {
            assertThat(book.latest(CardPrint.class, "M-1/r1/1")).isEmpty();
        }
    }

    /** A second mix of the plant has no factor: it stops the card, or stands on it as that. */
    @Test
    void aPlantsMixesStandOnOneCard() throws IOException {
        ofPlantNorth();
        Said stopped = cards("--plant", "North", "--on-one", "--out", "plant.pdf");
        assertThat(stopped.status()).isEqualTo(1);
        assertThat(stopped.codes()).containsExactly("issue.none-in-force");
        assertThat(folder.resolve("plant.pdf")).doesNotExist();
        Said made = cards("--plant", "North", "--on-one", "--leave-out", "--out", "plant.pdf");
        assertThat(made.status()).isZero();
        assertThat(made.json()).containsEntry("cardsMade", 1).containsEntry("plantCards", 1);
        assertThat(text("plant.pdf")).contains("Plant: North", "M-1", "M-2", "NO FACTOR");
        try (LabBook book = book()) {
            assertThat(book.latest(CardPrint.class))
                    .extracting(print -> print.value().paper())
                    .singleElement()
                    .asString()
                    .matches("A6, card \\d+ page 1 of plant North");
        }
        assertThat(terminal.run(with("cards", "--plant", "North", "--on-one", "--leave-out", "--out", "again.pdf"))
                        .out())
                .contains("Mixes on the card of plant North: 1, on 1 cards, into");
        assertThat(cards("--out", "all.pdf").json()).containsEntry("plantCards", null);
    }

    @Test
    void oneCardIsThatOfAPlantAndNoWallet() {
        assertThat(cards("--on-one", "--out", "plant.pdf").codes()).containsExactly("cards.on-one-plant");
        ofPlantNorth();
        Said wallet = cards("--plant", "North", "--on-one", "--leave-out", "--paper", "wallet", "--out", "plant.pdf");
        assertThat(wallet.status()).isEqualTo(1);
        assertThat(wallet.codes()).containsExactly("plant.no-wallet");
        assertThat(cards("--plant", "North", "--on-one", "--leave-out", "--chart", "--out", "plant.pdf")
                        .codes())
                .containsExactly("cards.on-one-no-chart");
        try (LabBook book = book()) {
            assertThat(book.latest(CardPrint.class)).isEmpty();
        }
    }

    private void ofPlantNorth() {
        try (LabBook book = book()) {
            Version<MixDesign> version = book.latest(MixDesign.class, "M-1").orElseThrow();
            MixDesign plain = version.value();
            MixDesign first = at(plain, plain.id());
            MixDesign second = at(plain, new MixId("M-2"));
            assertThat(book.keep(List.of(Draft.correcting(version, first), Draft.of(second)), "Ada", "of North"))
                    .isEmpty();
        }
    }

    private static MixDesign at(MixDesign plain, MixId id) {
        return new MixDesign(
                id,
                plain.title(),
                plain.batch(),
                plain.soakMinutes(),
                plain.airTolerancePercent(),
                plain.profileId(),
                plain.remarks(),
                Optional.of("North"));
    }
}
