package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import porebench.port.NoPrinter;

class WithoutPrinterTest {
    private final BenchBook bench = new BenchBook();
    private final List<String> saved = new ArrayList<>();

    private void tell(Exception failure) {
        WithoutPrinter.tell(bench.desk.tools(), new JPanel(), "printing", failure, () -> saved.add("pdf"));
    }

    @Test
    void whereThereIsNoPrinterAPdfFileIsOffered() {
        bench.asker.confirmations.add(true);
        tell(new NoPrinter("no printer"));
        assertThat(saved).containsExactly("pdf");
        assertThat(bench.asker.failures).isEmpty();
    }

    @Test
    void whoDoesNotWantItGetsNothing() {
        bench.asker.confirmations.add(false);
        tell(new NoPrinter("no printer"));
        assertThat(saved).isEmpty();
        assertThat(bench.asker.failures).isEmpty();
    }

    @Test
    void anyOtherFailureIsTold() {
        tell(new IllegalStateException("out of paper"));
        assertThat(saved).isEmpty();
        assertThat(bench.asker.failures).hasSize(1);
    }
}
