package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which files this process has open as lab books: each until it was closed as often as it was opened. */
class OpenBooksTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void begin() throws IOException {
        book = Files.writeString(folder.resolve("my.porebench"), "");
    }

    @Test
    void aBookOpenedThreeTimesIsOpenUntilItIsClosedTheThirdTime() throws IOException {
        Path real = OpenBooks.opened(book);
        OpenBooks.opened(book);
        OpenBooks.opened(book);
        assertThat(OpenBooks.contains(book)).isTrue();
        OpenBooks.closed(real);
        OpenBooks.closed(real);
        assertThat(OpenBooks.contains(book)).isTrue();
        OpenBooks.closed(real);
        assertThat(OpenBooks.contains(book)).isFalse();
    }

    @Test
    void aBookIsKnownByEveryNameThatItHas() throws IOException {
        Path second = Files.createLink(folder.resolve("second.porebench"), book);
        Path link = Files.createSymbolicLink(folder.resolve("link.porebench"), book);
        Path real = OpenBooks.opened(book);
        try {
            assertThat(OpenBooks.contains(second)).isTrue();
            assertThat(OpenBooks.contains(link)).isTrue();
        } finally {
            OpenBooks.closed(real);
        }
        assertThat(OpenBooks.contains(second)).isFalse();
    }

    @Test
    void neitherAnotherFileNorOneThatIsNotThereIsOpen() throws IOException {
        Path other = Files.writeString(folder.resolve("other.porebench"), "");
        Path real = OpenBooks.opened(book);
        try {
            assertThat(OpenBooks.contains(other)).isFalse();
            assertThat(OpenBooks.contains(folder.resolve("gone.porebench"))).isFalse();
        } finally {
            OpenBooks.closed(real);
        }
    }
}
