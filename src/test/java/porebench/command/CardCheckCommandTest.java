package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.evidence.paper.CardSeal;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** The text of a card checked on the command line. */
class CardCheckCommandTest {
    private static final String BODY = "HG-101, subtract G.";

    @TempDir
    Path folder;

    private Terminal terminal;
    private String sealed = "";

    @BeforeEach
    void theDemoBook() {
        terminal = new Terminal(folder);
        assertThat(terminal.json("demo", "--book", "one.book").status()).isZero();
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("one.book"))) {
            FactorIssue issue = book.latest(FactorIssue.class).stream()
                    .map(version -> version.value())
                    .filter(one -> one.mixId().equals(new MixId("HG-101")) && one.isIssue())
                    .reduce((first, last) -> last)
                    .orElseThrow();
            sealed = CardSeal.of(book, issue).orElseThrow().sealed(BODY);
        }
    }

    private Said check(String text) throws IOException {
        Files.writeString(folder.resolve("card.txt"), text);
        return terminal.json("card-check", "--book", "one.book", "--text", "card.txt");
    }

    @Test
    void aTextAsItWasMadeIsUnaltered() throws IOException {
        assertThat(terminal.json("card", "--book", "one.book", "--mix-id", "HG-101", "--out", "card.pdf")
                        .status())
                .isZero();
        Said said = check(sealed);
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json())
                .containsEntry("verdict", "unaltered")
                .containsEntry("mixId", "HG-101")
                .containsEntry("state", "in-force")
                .containsKeys("revision", "factorPercent", "copies");
        assertThat(said.codes()).isEmpty();
        Said words = terminal.run("card-check", "--book", "one.book", "--text", "card.txt");
        assertThat(words.out()).contains("Unaltered", "HG-101/r", "Copies that left");
    }

    @Test
    void anythingElseEndsWithOneAndSaysWhy() throws IOException {
        Said altered = check(sealed.replace("subtract", "add"));
        assertThat(altered.status()).isEqualTo(1);
        assertThat(altered.json()).containsEntry("verdict", "altered");
        assertThat(altered.codes()).contains("cardcheck.altered");
        Said unknown = check(sealed.replace("[HG-101", "[HG-999"));
        assertThat(unknown.json())
                .containsEntry("verdict", "unknown")
                .containsEntry("mixId", null)
                .containsEntry("state", null);
        Said old = check("Subtract G 0.4 % air.");
        assertThat(old.json()).containsEntry("verdict", "no-code");
        assertThat(old.status()).isEqualTo(1);
    }

    @Test
    void whatCannotBeReadIsRefused() throws IOException {
        assertThat(check(" \n").codes()).containsExactly("cardcheck.blank");
        assertThat(check("x".repeat(100_001)).codes()).containsExactly("cardcheck.too-long");
        Files.write(folder.resolve("latin.txt"), new byte[] {'a', (byte) 0xF1});
        assertThat(terminal.json("card-check", "--book", "one.book", "--text", "latin.txt")
                        .codes())
                .containsExactly("cardcheck.not-utf-8");
        assertThat(terminal.json("card-check", "--book", "one.book", "--text", "none.txt")
                        .codes())
                .containsExactly("csv.file-missing");
        assertThat(terminal.json("card-check", "--book", "one.book", "--text", ".")
                        .codes())
                .containsExactly("csv.file-unreadable");
        assertThat(terminal.json("card-check", "--book", "one.book").status()).isEqualTo(2);
    }

    @Test
    void theTextMayComeOverTheStandardInput() {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(sealed.getBytes(StandardCharsets.UTF_8)));
            assertThat(terminal.json("card-check", "--book", "one.book", "--text", "-")
                            .json())
                    .containsEntry("verdict", "unaltered");
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void aPictureWithoutACodeIsRefused() throws IOException {
        BufferedImage blank = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = blank.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, 200, 200);
        pen.dispose();
        ImageIO.write(blank, "png", folder.resolve("blank.png").toFile());
        Said said = terminal.json("card-check", "--book", "one.book", "--picture", "blank.png");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("code.none-found");
    }
}
