package porebench.evidence.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.KeptStudy;
import porebench.record.SampleStudies;
import porebench.store.Books;

/** What a study must be to be kept, and that it comes out of the lab book as the sheet it was read from. */
class KeptReadingsTest {
    static List<KeptStudy> studies() {
        return List.of(SampleStudies.operators("A"), SampleStudies.layers("B"), SampleStudies.laboratories("C"));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aStudyAsASheetHasItsColumnsItsOrderAndItsDigits(KeptStudy study) {
        Sheet<ValueRow> sheet = KeptReadings.sheet(study);
        assertThat(sheet.file()).isEqualTo(study.id().text());
        assertThat(KeptReadings.layers(sheet)).isEqualTo(study.layers());
        assertThat(KeptReadings.readings(sheet)).isEqualTo(study.readings());
        assertThat(sheet.rows()).extracting(Sheet.Row::line).containsOnly(0);
        assertThat(KeptReadings.check(study.layout(), sheet)).isEmpty();
    }

    @Test
    void theColumnsOfALayoutAreThoseItsReadingsAreLaidOutBy() {
        assertThat(KeptStudy.Layout.OPERATORS.columns())
                .containsExactly(CrossedReadings.OPERATOR, CrossedReadings.SAMPLE, CrossedReadings.REPEAT);
        assertThat(KeptStudy.Layout.LABORATORIES.columns())
                .containsExactly(LaboratoryLevels.LABORATORY, LaboratoryLevels.LEVEL);
        assertThat(KeptStudy.Layout.LAYERS.columns()).isEmpty();
    }

    @Test
    void whatCannotBeMadeCannotBeKept() {
        KeptStudy twice = SampleStudies.of(
                "A",
                KeptStudy.Layout.OPERATORS,
                KeptStudy.Layout.OPERATORS.columns(),
                "Ada x 1 5.4",
                "Ada x 1 5.4",
                "Bo x 1 5.4");
        assertThat(KeptReadings.check(KeptStudy.Layout.OPERATORS, KeptReadings.sheet(twice)))
                .isEqualTo(CrossedReadings.of(KeptReadings.sheet(twice)).problems())
                .isNotEmpty();
        KeptStudy single = SampleStudies.of("A", KeptStudy.Layout.LAYERS, List.of("day"), "d1 5.4");
        assertThat(Books.codes(KeptReadings.check(KeptStudy.Layout.LAYERS, KeptReadings.sheet(single))))
                .containsExactly("study.too-few-rows");
        Sheet<ValueRow> empty = new Sheet<>("f.csv", List.of(), List.of());
        assertThat(KeptReadings.check(KeptStudy.Layout.LABORATORIES, empty))
                .containsExactly(Problem.error("value", "study.no-row").at(Place.of("f.csv")));
        Problem unread =
                Problem.error("value", "csv.not-a-number", "value", "x").at(Place.of("f.csv", 2, 3));
        for (KeptStudy.Layout layout : KeptStudy.Layout.values()) {
            assertThat(KeptReadings.check(layout, new Sheet<>("f.csv", List.of(), List.of(unread))))
                    .containsExactly(unread);
        }
    }

    @Test
    void digitsStayAsTypedBesideTheNumberToComputeWith() {
        ValueRow row = new ValueRow(Map.of(), new BigDecimal("0.40"));
        assertThat(row.number().toString()).isEqualTo("0.40");
        assertThat(row.value()).isEqualTo(0.4);
        assertThat(new ValueRow(Map.of(), BigDecimal.valueOf(0.4)).number().toString())
                .isEqualTo("0.4");
    }

    @Test
    void aStudyIsWholeFromTheBeginning() {
        refuses("layers must be from 1 to 6", KeptStudy.Layout.LAYERS, List.of(), "5.4");
        refuses("layers must be from 1 to 6", KeptStudy.Layout.LAYERS, List.of("a", "b", "c", "d", "e", "f", "g"));
        refuses("layers must stand once each", KeptStudy.Layout.LAYERS, List.of("a", " a"), "x y 5.4");
        refuses("layer must", KeptStudy.Layout.LAYERS, List.of(" "), "x 5.4");
        refuses("layers must be those of OPERATORS", KeptStudy.Layout.OPERATORS, List.of("operator", "sample"));
        refuses("layers must be those of LABORATORIES", KeptStudy.Layout.LABORATORIES, List.of("level", "laboratory"));
        refuses("readings must be there", KeptStudy.Layout.LAYERS, List.of("a"));
        refuses("names must be one a layer", KeptStudy.Layout.LAYERS, List.of("a"), "x 5.4", "x y 5.4");
        refuses("names must be one a layer", KeptStudy.Layout.LAYERS, List.of("a", "b"), "x 5.4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new KeptStudy.Reading(List.of(" "), BigDecimal.ONE))
                .withMessageContaining("name must");
        assertThatIllegalArgumentException().isThrownBy(() -> byNobody()).withMessageContaining("by must");
    }

    private static KeptStudy byNobody() {
        KeptStudy plain = SampleStudies.layers("A");
        return new KeptStudy(
                plain.id(), plain.layout(), "", plain.madeOn(), " ", "", plain.layers(), plain.readings(), "");
    }

    private static void refuses(String rule, KeptStudy.Layout layout, List<String> layers, String... rows) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SampleStudies.of("A", layout, layers, rows))
                .withMessageContaining(rule);
    }
}
