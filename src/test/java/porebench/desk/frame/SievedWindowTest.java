package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;
import porebench.desk.table.RowTable;
import porebench.record.id.MixId;

/** Full mixture and mortar on the page of a factor, in the real window. */
@NeedsDisplay
class SievedWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void open() throws Exception {
        started = new StartedWindow(folder, new ScriptedAsker());
        window = started.window();
        started.startWith(null);
    }

    @AfterEach
    void close() throws Exception {
        started.close();
    }

    private RowTable<?> table(String mix) throws Exception {
        EventThread.run(() -> window.openMix(new MixId(mix)));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        return Named.in(window.current().component(), RowTable.class, "factor.sieved");
    }

    /**
     * HG-104: cement 260 kg of 3.15, slag 80 of 2.90, water 130, sand 560 of 2.62, granite 420 of 2.69, basalt 1010 of 2.88, 46 % of
     * it held; G 0.2. Reading 3.2, air 3.0:
     *
     * <pre>
     * 0.082540 + 0.027586 + 0.13 + 0.213740 = 0.453866 m3 of mortar; stone 0.156134 + 0.350694, held 0.161319
     * Vt 0.960694, Vc 0.799375; full mixture 239.8124 / (96.0694 - 0.483957) = 2.509
     * mortar 239.8124 / (45.3866 + 3 x 0.345509) = 5.166
     * </pre>
     */
    @Test
    void everyReadingOfAWetSievedMixIsToldAndOfNoOther() throws Exception {
        RowTable<?> table = table("HG-104");
        assertThat(EventThread.comes(() -> table.isShowing() && table.getSelectedRow() >= 0))
                .isTrue();
        assertThat(EventThread.call(() -> {
                    int row = table.getSelectedRow();
                    StringBuilder said = new StringBuilder();
                    for (int column = 0; column < table.getColumnCount(); column++) {
                        said.append(table.getValueAt(row, column)).append(' ');
                    }
                    return said.toString().strip();
                }))
                .isEqualTo("3.2 3.0 2.5 5.2 passes");
        RowTable<?> other = table("HG-101");
        assertThat(EventThread.comes(() -> !other.isShowing())).isTrue();
    }
}
