package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Place;
import porebench.port.ChainSource;
import porebench.port.OpeningRefused;
import porebench.port.OutputFolder;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;
import porebench.record.chain.ChainRow;
import porebench.record.chain.ChainTaker;
import porebench.store.Books;

/** A whole lab book in files: what was written comes back entry by entry, and what was changed is refused with its place. */
class WholeFolderTest {
    private static final String HEAD = "0123456789abcdef".repeat(4);

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        file(
                "book.csv",
                "name,value",
                "form,1",
                "schema_step,7",
                "entries,2",
                "head," + HEAD,
                "table,entry",
                "table,stone",
                "table,part");
        file("book-entry.csv", "entry_no,kept_by", "1,R. Vale", "2,\\e");
        file("book-stone.csv", "name,entry_no", "S-1,1", "'=S-2,2", ",2");
        file("book-part.csv", "entry_no,text", "2,two\\u000Alines");
    }

    private void file(String name, String... lines) throws IOException {
        Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
    }

    private List<ChainEntry> entries() {
        ChainSource source = new CsvSheets().readWhole(folder);
        List<ChainEntry> entries = new ArrayList<>();
        for (Optional<ChainEntry> next = source.next(); next.isPresent(); next = source.next()) {
            entries.add(next.get());
        }
        return entries;
    }

    /** Reads everything and returns where it is refused and why. */
    private String refusal() {
        try {
            entries();
        } catch (OpeningRefused refused) {
            Place place = refused.problem().place().orElse(Place.of(""));
            return place.file() + ":" + place.line().orElse(0) + ":"
                    + place.column().orElse(0) + " " + refused.problem().code();
        }
        return "not refused";
    }

    private static String said(ChainRow row) {
        return row.table() + row.cells();
    }

    @Test
    void theOutlineSaysWhatTheFilesMustComeTo() {
        ChainOutline outline = new CsvSheets().readWhole(folder).outline();
        assertThat(outline.step()).isEqualTo(7);
        assertThat(outline.entries()).isEqualTo(2);
        assertThat(outline.hash()).isEqualTo(HEAD);
        assertThat(outline.place()).isEqualTo(Place.of("book.csv", 4));
        assertThat(outline.tables())
                .extracting(
                        ChainOutline.TableOutline::name,
                        ChainOutline.TableOutline::columns,
                        ChainOutline.TableOutline::heading)
                .containsExactly(
                        tuple("entry", List.of("entry_no", "kept_by"), Place.of("book-entry.csv", 1)),
                        tuple("stone", List.of("name", "entry_no"), Place.of("book-stone.csv", 1)),
                        tuple("part", List.of("entry_no", "text"), Place.of("book-part.csv", 1)));
    }

    /** Nothing is left out, an empty text is one, and a sign at the beginning has its mark taken off. */
    @Test
    void everyEntryComesWithItsRowsInTheOrderOfTheTables() {
        List<ChainEntry> entries = entries();
        assertThat(entries).extracting(ChainEntry::number).containsExactly(1L, 2L);
        assertThat(entries)
                .extracting(entry -> said(entry.entry()))
                .containsExactly("entry{kept_by=R. Vale}", "entry{kept_by=}");
        assertThat(entries.get(0).rows()).extracting(WholeFolderTest::said).containsExactly("stone{name=S-1}");
        assertThat(entries.get(1).rows())
                .extracting(WholeFolderTest::said)
                .containsExactly("stone{name==S-2}", "stone{}", "part{text=two\nlines}");
        assertThat(entries.get(1).rows().get(2).place()).isEqualTo(Place.of("book-part.csv", 2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "form,2 | book.csv:2:2 whole.outline",
                "form,1;form,3 | book.csv:3:2 whole.outline",
                "form,1;table,entry;schema_step,seven | book.csv:4:2 whole.outline",
                "table,../entry | book.csv:2:2 whole.table-unknown",
                "table,entry;table,entry | book.csv:3:2 whole.table-unknown",
                "form,1 | book.csv:0:0 whole.not-whole",
            })
    void anOutlineThatSaysWhatItCannotIsRefused(String lines, String expected) throws IOException {
        file("book.csv", ("name,value;" + lines).split(";"));
        assertThat(refusal()).isEqualTo(expected.strip());
    }

    @Test
    void aFolderWithoutAnOutlineIsNoWholeExport() throws IOException {
        file("book.csv", "name,worth", "form,1");
        assertThat(refusal()).isEqualTo("book.csv:1:0 whole.not-whole");
        Files.delete(folder.resolve("book.csv"));
        assertThat(refusal()).isEqualTo(":0:0 whole.not-whole");
    }

    @Test
    void aFileThatIsMissingIsNamed() throws IOException {
        Files.delete(folder.resolve("book-part.csv"));
        assertThat(refusal()).isEqualTo("book-part.csv:0:0 csv.file-missing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name;S-1 | book-stone.csv:1:0 csv.column-missing",
                "name,entry_no,name;a,1,b | book-stone.csv:1:3 csv.column-twice",
                "name,entry_no;S-1,1;S-2 | book-stone.csv:3:0 csv.fields-wrong-number",
                "name,entry_no;S-1,one | book-stone.csv:2:2 whole.entry-number",
                "name,entry_no;S-1,0 | book-stone.csv:2:2 whole.entry-number",
                "name,entry_no;S-1,2;S-2,1 | book-stone.csv:3:2 whole.line-order",
                "name,entry_no;S-1,1;S-2,3 | book-stone.csv:3:0 whole.without-entry",
                "entry_no,name,place;1,a,b\\q | book-stone.csv:2:3 whole.cell-unreadable",
                "entry_no,name,place;1,=a,b | book-stone.csv:2:2 whole.cell-unreadable",
            })
    void aTableThatWasChangedIsRefusedAtItsPlace(String lines, String expected) throws IOException {
        file("book-stone.csv", lines.split(";"));
        assertThat(refusal()).isEqualTo(expected.strip());
    }

    @Test
    void entriesAreNumberedFromOneWithoutAGap() throws IOException {
        file("book-entry.csv", "kept_by,entry_no", "R. Vale,1", "M. Ash,3");
        assertThat(refusal()).isEqualTo("book-entry.csv:3:2 whole.entry-order");
        file("book-entry.csv", "kept_by,entry_no", "M. Ash,2");
        assertThat(refusal()).isEqualTo("book-entry.csv:2:2 whole.entry-order");
    }

    /** What a person needs to mend a file by hand: the number that should stand there, the column that stands there already. */
    @Test
    void aRefusalSaysWhatWasExpected() throws IOException {
        file("book-entry.csv", "entry_no,kept_by", "1,R. Vale", "3,M. Ash");
        assertThat(refused().problem().values()).containsExactly(3L, 2L);
        file("book-entry.csv", "entry_no,kept_by,kept_by", "1,R. Vale,M. Ash");
        assertThat(refused().problem().values()).containsExactly("kept_by", 2);
    }

    private OpeningRefused refused() {
        return catchThrowableOfType(OpeningRefused.class, this::entries);
    }

    /** The last line is looked at before the first entry is given out. */
    @Test
    void aFileIsLookedThroughBeforeAnythingIsRead() throws IOException {
        file("book-part.csv", "entry_no,text", "2,good", "2,b\\q");
        assertThatThrownBy(() -> new CsvSheets().readWhole(folder)).isInstanceOf(OpeningRefused.class);
    }

    @Test
    void textOfSixteenBitsIsRefused() throws IOException {
        Files.write(folder.resolve("book-part.csv"), "entry_no,text\n2,good\n".getBytes(StandardCharsets.UTF_16));
        assertThat(refusal()).isEqualTo("book-part.csv:0:0 csv.utf-16");
    }

    @Test
    void aWholeLabBookComesBackAsItWasWritten() throws IOException {
        Path place = folder.resolve("own");
        List<ChainEntry> before = new ArrayList<>();
        ChainOutline[] outline = new ChainOutline[1];
        List<Path> written;
        try (LabBook book = Books.fresh(folder.resolve("book.porebench"))) {
            Books.keep(book, Samples.full());
            book.unroll(new ChainTaker() {
                @Override
                public void begins(ChainOutline whole) {
                    outline[0] = whole;
                }

                @Override
                public void takes(ChainEntry entry) {
                    before.add(entry);
                }
            });
            written = new CsvSheets().exportWhole(book, OutputFolder.fresh(Files.createDirectory(place)));
        }
        try (Stream<Path> files = Files.list(place)) {
            assertThat(files.toList())
                    .containsExactlyInAnyOrderElementsOf(written)
                    .isNotEmpty();
        }
        ChainSource source = new CsvSheets().readWhole(place);
        assertThat(source.outline().hash()).isEqualTo(outline[0].hash());
        assertThat(source.outline().entries()).isEqualTo(before.size());
        assertThat(source.outline().step()).isEqualTo(outline[0].step());
        for (ChainEntry entry : before) {
            ChainEntry read = source.next().orElseThrow();
            assertThat(read.number()).isEqualTo(entry.number());
            assertThat(read.entry().cells()).isEqualTo(withoutNumber(entry.entry()));
            assertThat(read.rows())
                    .extracting(ChainRow::table, ChainRow::cells)
                    .containsExactlyElementsOf(entry.rows().stream()
                            .map(row -> tuple(row.table(), withoutNumber(row)))
                            .toList());
        }
        assertThat(source.next()).isEmpty();
    }

    private static SortedMap<String, String> withoutNumber(ChainRow row) {
        TreeMap<String, String> cells = new TreeMap<>(row.cells());
        cells.remove(ChainEntry.NUMBER);
        return cells;
    }
}
