package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a bulk command allocates must grow with the rows and not with their square: four times the rows may take hardly more than four
 * times the bytes, where a square would take sixteen times.
 */
class GrowthTest {
    private static final int FEW = 500;
    private static final int MANY = 4 * FEW;

    /** Four times, and what a logarithm and the growing of arrays make of it. */
    private static final double MOST = 5.5;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void open() {
        terminal = new Terminal(folder);
    }

    /** Returns how many bytes this thread allocates while it does something. */
    private static double allocated(Runnable work) {
        long before = THREADS.getCurrentThreadAllocatedBytes();
        work.run();
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }

    /** The first run loads classes, which is not counted. */
    private static void growsWithTheRows(IntConsumer command) {
        command.accept(FEW);
        double few = allocated(() -> command.accept(FEW));
        double many = allocated(() -> command.accept(MANY));
        assertThat(many / few).isLessThan(MOST);
    }

    @Test
    void factor() {
        for (int rows : new int[] {FEW, MANY}) {
            LabFiles.write(folder, "trials-" + rows + ".csv", LabFiles.manyTrials(rows));
        }
        growsWithTheRows(rows -> {
            Terminal.Said said = terminal.json("factor", "--trials", "trials-" + rows + ".csv");
            assertThat(said.status()).isZero();
        });
    }

    /** Begins a lab book with the mixes that many trials are made of. */
    private void begin(String book, int rows) {
        LabFiles.write(folder, "mixes-" + rows + ".csv", LabFiles.manyMixes(rows / 10));
        LabFiles.write(folder, "meters.csv", LabFiles.METERS);
        LabFiles.write(folder, "sources.csv", LabFiles.SOURCES);
        done("import", "--new", "--book", book, "sources.csv", "meters.csv", "mixes-" + rows + ".csv");
    }

    private void done(String... command) {
        Terminal.Said said = terminal.json(command);
        assertThat(said.status()).as(said.out()).isZero();
    }

    private void fill(String book, int rows) {
        begin(book, rows);
        LabFiles.write(folder, "trials-" + rows + ".csv", LabFiles.manyTrials(rows));
        done("import", "--book", book, "trials-" + rows + ".csv");
    }

    @Test
    void importOfTrials() {
        List<String> books = new ArrayList<>(List.of("first", "few", "many"));
        for (String book : books) {
            begin(book, book.equals("many") ? MANY : FEW);
        }
        for (int rows : new int[] {FEW, MANY}) {
            LabFiles.write(folder, "trials-" + rows + ".csv", LabFiles.manyTrials(rows));
        }
        growsWithTheRows(rows -> done("import", "--book", books.remove(0), "trials-" + rows + ".csv"));
    }

    @Test
    void verifyAndBothExports() {
        fill("book-" + FEW, FEW);
        fill("book-" + MANY, MANY);
        growsWithTheRows(rows -> done("verify", "--book", "book-" + rows));
        growsWithTheRows(rows -> done("export", "--replace", "--book", "book-" + rows, "out-" + rows));
        growsWithTheRows(rows -> done("export", "--whole", "--replace", "--book", "book-" + rows, "whole-" + rows));
    }
}
