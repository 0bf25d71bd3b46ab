package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class DraftTextTest {
    private static final TypedDraft ROW = new TypedDraft(Map.of("source", "Kies, \"0/16\"", "mass", "720"), Map.of());
    private static final TypedDraft DRAFT = new TypedDraft(
            Map.of("remarks", "one\ttwo\nthree\\n\r", "waterTemperature", "21,5 °C", "empty", ""),
            Map.of("constituents", List.of(ROW, TypedDraft.BLANK, ROW), "points", List.of()));

    @Test
    void comesBackAsItWasTypedWithItsPartsAndItsEmptyRows() {
        assertThat(DraftText.parse(DraftText.of(DRAFT))).contains(DRAFT);
        assertThat(DraftText.parse(DraftText.of(TypedDraft.BLANK))).contains(TypedDraft.BLANK);
    }

    @Test
    void isALineAField() {
        assertThat(DraftText.of(ROW)).isEqualTo("=mass\t720\n=source\tKies, \"0/16\"\n.\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{}",
                "=mass\t7",
                "=mass 7\n.\n",
                "?mass\t7\n.\n",
                "*rows\ttwo\n.\n",
                "*rows\t1\n.\n",
                ".\n.\n"
            })
    void whatIsNoDraftIsNone(String text) {
        assertThat(DraftText.parse(text)).isEmpty();
    }
}
