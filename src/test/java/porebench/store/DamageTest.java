package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.BookCheck;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;

/** That damage to the file itself is told with its place, wherever it is, and never hides behind something else. */
class DamageTest {
    private static final int FLIPS = 112;

    /** Opens to read only, which is quicker; the checks are the same. */
    private static final SqliteShelf READER = new SqliteShelf(Books.CLOCK, Steps.ALL, file -> false);

    private static final byte INDEX_LEAF = 0x0A;
    private static final byte INDEX_INNER = 0x02;
    private static final byte TABLE_LEAF = 0x0D;

    @TempDir
    Path folder;

    private Path file;
    private byte[] whole;
    private List<Object> register;

    @BeforeEach
    void begin() throws IOException {
        file = folder.resolve("book.porebench");
        try (LabBook book = Books.fresh(file)) {
            Books.keep(book, Samples.full());
            List<Kept> more = new ArrayList<>();
            for (int number = 1; number <= 120; number++) {
                more.add(Samples.trial("T-" + number, "M-1", "M-1/1", "1.8"));
            }
            Books.keep(book, more);
            register = everything(book);
        }
        whole = Files.readAllBytes(file);
    }

    private static List<Object> everything(LabBook book) {
        List<Object> all = new ArrayList<>();
        for (RecordKind kind : RecordKind.values()) {
            List<? extends Version<? extends Kept>> latest = book.latest(kind.type());
            all.addAll(latest);
            latest.forEach(
                    version -> all.add(book.latest(kind.type(), version.value().recordId())));
        }
        return all;
    }

    private List<Integer> pages(byte... types) {
        int size = ByteBuffer.wrap(whole).getShort(16) & 0xFFFF;
        List<Integer> starts = new ArrayList<>();
        for (int start = size; start + size <= whole.length; start += size) {
            for (byte type : types) {
                // An index without cells (two bytes from the fourth on count them) has nothing to flip.
                if (whole[start] == type && ByteBuffer.wrap(whole, start + 3, 2).getShort() != 0) {
                    starts.add(start);
                }
            }
        }
        assertThat(starts).isNotEmpty();
        return starts;
    }

    /** What is read through an index is right, or the check says that it is not, or the file does not open. */
    @Test
    void noFlipInAnIndexIsIntactWhileTheRegisterIsWrong() throws IOException {
        List<Integer> indexes = pages(INDEX_LEAF, INDEX_INNER);
        int size = ByteBuffer.wrap(whole).getShort(16) & 0xFFFF;
        Random random = new Random(7);
        int found = 0;
        for (int flip = 0; flip < FLIPS; flip++) {
            byte[] flipped = whole.clone();
            int start = indexes.get(flip % indexes.size());
            int content = start + (ByteBuffer.wrap(whole, start + 5, 2).getShort() & 0xFFFF);
            flipped[content + random.nextInt(start + size - content)] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, flipped);
            found += isToldOrHarmless() ? 1 : 0;
        }
        assertThat(found).isGreaterThan(FLIPS * 9 / 10);
    }

    /** Returns whether the damage was told; fails when it was not and what is read is wrong. */
    private boolean isToldOrHarmless() {
        try (LabBook book = READER.open(file)) {
            BookCheck check = book.check(Optional.empty());
            if (check.isIntact()) {
                assertThat(everything(book)).isEqualTo(register);
                return false;
            }
            assertThat(check.integrity()).isFalse();
            assertThat(check.faults())
                    .allSatisfy(fault -> assertThat(fault.place()).isNotBlank());
            return true;
        } catch (StoreException toldAtOnce) {
            return true;
        }
    }

    @Test
    void aDamagedIndexIsNamed() throws IOException {
        List<Integer> indexes = pages(INDEX_LEAF);
        byte[] flipped = whole.clone();
        // The last bytes of a page are the first cell: the key of an entry.
        int last = indexes.get(0) + (ByteBuffer.wrap(whole).getShort(16) & 0xFFFF) - 1;
        flipped[last - 12] ^= 0x01;
        Files.write(file, flipped);
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.check(Optional.empty()).faults())
                    .anySatisfy(fault -> assertThat(fault.place()).startsWith("index "));
        }
    }

    @Test
    void aTablePageThatCannotBeReadHidesNoOtherFault() throws IOException, SQLException {
        Books.sql(file, "DROP TRIGGER source_is_not_changed", "UPDATE source SET ledge = 'elsewhere'");
        whole = Files.readAllBytes(file);
        byte[] damaged = whole.clone();
        int size = ByteBuffer.wrap(whole).getShort(16) & 0xFFFF;
        int trials = pages(TABLE_LEAF).stream()
                .filter(start -> new String(whole, start, size, StandardCharsets.ISO_8859_1).contains("T-77"))
                .filter(start -> new String(whole, start, size, StandardCharsets.ISO_8859_1).contains("M-1/1"))
                .findFirst()
                .orElseThrow();
        damaged[trials] = 0x55;
        Files.write(file, damaged);
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.notWritable()).map(Problem::code).contains("book.not-sound");
            BookCheck check = book.check(Optional.empty());
            List<String> codes =
                    check.faults().stream().map(BookCheck.Fault::code).toList();
            assertThat(codes).contains("book.schema-missing", "book.unreadable-entry", "book.chain-broken");
            assertThat(check.faults()).anySatisfy(fault -> {
                assertThat(fault.code()).isEqualTo("book.chain-broken");
                assertThat(fault.entry()).isEqualTo(3);
                assertThat(fault.place()).isEqualTo("entry 3");
            });
            assertThat(check.integrity()).isFalse();
            assertThat(check.schema()).isFalse();
            assertThat(check.head().entries()).isEqualTo(131);
            assertThat(Books.codes(book.keep(
                            List.of(Draft.of(Samples.source("S-9", Role.FINE, "Ledge"))), "R. Vale", "entered")))
                    .containsExactly("book.not-sound");
            assertThat(book.latest(Source.class)).hasSize(1);
            assertThat(book.history(Trial.class, "nothing")).isEmpty();
        }
    }
}
