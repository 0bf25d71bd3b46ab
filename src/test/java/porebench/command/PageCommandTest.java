package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.command.book.PageReadingsCommand;

/** The phone page on the command line; the terminal's day is 1 July 2026. */
class PageCommandTest {
    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void theDemoBook() {
        terminal = new Terminal(folder);
        assertThat(terminal.json("demo", "--book", "one.book").status()).isZero();
    }

    private Said page(String mix, String... more) {
        String[] all = new String[7 + more.length];
        System.arraycopy(
                new String[] {"page", "--book", "one.book", "--mix-id", mix, "--out", "page.html"}, 0, all, 0, 7);
        System.arraycopy(more, 0, all, 7, more.length);
        return terminal.json(all);
    }

    @Test
    void writesOneFileThatNamesNothingOutsideItAndRecordsIt() throws IOException {
        Said said = page("HG-101", "--language", "de");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json())
                .containsEntry("path", folder.resolve("page.html").toString())
                .containsEntry("mixId", "HG-101")
                .containsEntry("state", "in-force")
                .containsEntry("marked", false)
                .containsKeys("revision", "number");
        String html = Files.readString(folder.resolve("page.html"));
        assertThat(html)
                .contains("default-src 'none'; script-src 'sha256-", "\"language\":\"de\"")
                .doesNotContain("http:", "https:", "src=", "@import", "url(");
        Said again = terminal.json("export", "--book", "one.book", "out");
        assertThat(again.status()).isZero();
        assertThat(Files.readString(folder.resolve("out/card-prints.csv"))).contains(",phone,");
    }

    @Test
    void theTextOnThePageChecksAsUnaltered() throws IOException {
        page("HG-101");
        String html = Files.readString(folder.resolve("page.html"));
        String text =
                html.replaceFirst("(?s).*\"text\":\"(.*?)\",\"words\".*", "$1").replace("\\u000a", "\n");
        Files.writeString(folder.resolve("text.txt"), text);
        Said check = terminal.json("card-check", "--book", "one.book", "--text", "text.txt");
        assertThat(check.json()).as(check.out()).containsEntry("verdict", "unaltered");
    }

    @Test
    void isRefusedAsACardIs() {
        Said none = page("HG-999");
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.codes()).containsExactly("book.not-there");
        assertThat(page("HG-101", "--language", "nl").codes()).containsExactly("page.no-language");
        terminal = terminal.on("2031-07-01");
        Said lapsed = page("HG-101");
        assertThat(lapsed.status()).isEqualTo(1);
        assertThat(lapsed.codes()).contains("issue.not-usable");
        assertThat(Files.exists(folder.resolve("page.html"))).isFalse();
        Said marked = page("HG-101", "--marked");
        assertThat(marked.status()).isZero();
        assertThat(marked.json()).containsEntry("marked", true).containsEntry("state", "lapsed");
        assertThat(terminal.run(
                                "page",
                                "--book",
                                "one.book",
                                "--mix-id",
                                "HG-101",
                                "--out",
                                "page.html",
                                "--replace",
                                "--marked")
                        .out())
                .contains("Phone page written to");
    }

    @Test
    void aFieldSheetLeavesByTheSameGate() throws IOException {
        String[] sheet = {"field-sheet", "--book", "one.book", "--mix-id", "HG-101", "--out", "sheet.pdf"};
        Said said = terminal.json(sheet);
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json()).containsEntry("mixId", "HG-101").containsEntry("marked", false);
        assertThat(terminal.json("export", "--book", "one.book", "out").status())
                .isZero();
        assertThat(Files.readString(folder.resolve("out/card-prints.csv"))).contains(",field sheet A4,");
        terminal = terminal.on("2031-07-01");
        assertThat(terminal.json("field-sheet", "--book", "one.book", "--mix-id", "HG-101", "--out", "late.pdf")
                        .codes())
                .contains("issue.not-usable");
        assertThat(Files.exists(folder.resolve("late.pdf"))).isFalse();
        assertThat(terminal.run(
                                "field-sheet",
                                "--book",
                                "one.book",
                                "--mix-id",
                                "HG-101",
                                "--out",
                                "late.pdf",
                                "--marked")
                        .out())
                .contains("Field sheet written to");
    }

    @Test
    void aFileThatIsThereIsNotReplacedUnasked() {
        assertThat(page("HG-101").status()).isZero();
        assertThat(page("HG-101").status()).isEqualTo(1);
        assertThat(page("HG-101", "--replace").status()).isZero();
    }

    static void picture(Path file, String text) throws Exception {
        ByteMatrix squares = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        BufferedImage picture = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 400; x++) {
                int column = x / 6 - 4;
                int row = y / 6 - 4;
                boolean inside = column >= 0 && row >= 0 && column < squares.getWidth() && row < squares.getHeight();
                picture.setRGB(x, y, inside && squares.get(column, row) == 1 ? 0 : 0xFFFFFF);
            }
        }
        ImageIO.write(picture, "png", file.toFile());
    }

    @Test
    void aPhotoWithoutReadingsStopsAllOfThem() throws Exception {
        String heading = PageReadingsCommand.HEADING;
        picture(folder.resolve("one.png"), heading + "\r\nR-1,HG-101,2026-07-01T09:00:00+00:00,12,,5.4,,,,\r\n");
        picture(folder.resolve("other.png"), "PBMIX:HG-101");
        Said mixed = terminal.json(
                "page-readings", "--picture", "one.png", "--picture", "other.png", "none.png", "--out", "home.csv");
        assertThat(mixed.status()).isEqualTo(1);
        assertThat(mixed.codes()).containsExactly("page.no-readings", "csv.file-missing");
        assertThat(Files.exists(folder.resolve("home.csv"))).isFalse();
        Said one = terminal.run("page-readings", "--picture", "one.png", "--out", "home.csv");
        assertThat(one.out()).contains("Readings: 1, from 1 codes");
        assertThat(Files.readString(folder.resolve("home.csv")))
                .isEqualTo(heading + "\r\nR-1,HG-101,2026-07-01T09:00:00+00:00,12,,5.4,,,,\r\n");
    }
}
