package porebench.desk.frame.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.JFileChooser;
import org.junit.jupiter.api.Test;
import porebench.desk.Asker;

class KindsOfFileTest {
    private static final Asker.Kind PNG = new Asker.Kind("png", "picture");
    private static final Asker.Kind CSV = new Asker.Kind("csv", "figures");
    private final KindsOfFile kinds = new KindsOfFile(List.of(PNG, CSV), FrameTexts.in(Locale.ENGLISH));

    private String named(String name, Asker.Kind chosen) {
        return kinds.named(Path.of(name), chosen).toString();
    }

    @Test
    void aNameGetsTheEndingOfTheKindChosenUnlessItHasOneOfThem() {
        assertThat(named("plot", PNG)).isEqualTo("plot.png");
        assertThat(named("plot", CSV)).isEqualTo("plot.csv");
        assertThat(named("mix 3.5", PNG)).isEqualTo("mix 3.5.png");
        assertThat(named("plot.CSV", CSV)).isEqualTo("plot.CSV");
        assertThat(named("plot.bmp", PNG)).isEqualTo("plot.bmp.png");
    }

    @Test
    void aTypedEndingOfAnotherKindCountsWhileTheFirstIsOffered() {
        assertThat(named("plot.csv", PNG)).isEqualTo("plot.csv");
    }

    @Test
    void theKindChosenReplacesTheEndingThatWasOffered() {
        assertThat(named("plot.png", CSV)).isEqualTo("plot.csv");
    }

    @Test
    void aDialogNamesTheTypeOfFileItIsFor() {
        JFileChooser chooser = new JFileChooser();
        KindsOfFile.name(chooser, "factor-card-HG-101.pdf", FrameTexts.in(Locale.ENGLISH));
        assertThat(chooser.getFileFilter().getDescription()).isEqualTo("PDF document (*.pdf)");
        KindsOfFile.name(chooser, ".porebench", FrameTexts.in(Locale.forLanguageTag("es")));
        assertThat(chooser.getFileFilter().getDescription()).isEqualTo("Libro de laboratorio (*.porebench)");
        KindsOfFile.name(chooser, "x.txt", FrameTexts.in(Locale.ENGLISH));
        assertThat(chooser.getFileFilter().getDescription()).isEqualTo("Files ending in .txt");
    }
}
