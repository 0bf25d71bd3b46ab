package porebench.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.evidence.paper.SampleLabels;
import porebench.port.Paper;
import porebench.print.PageText;
import porebench.print.Presses;
import porebench.print.Sheets;

/** 700 kg of sand and 1050 kg of stone in a cubic metre are 4.9 and 7.35 kg in a bowl of 7.00 L. */
class LabelPagesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 29);

    @Test
    void thereIsOneLabelForEachAggregateOfEachTrial() {
        SampleLabels labels = new SampleLabels(Sheets.usual(3), DAY);
        assertThat(labels.labels()).hasSize(6);
        assertThat(labels.labels()).extracting(SampleLabels.Label::trial).containsExactly(1, 1, 2, 2, 3, 3);
        assertThat(labels.laboratory()).isPresent();
        assertThat(labels.isTraining()).isFalse();
    }

    @Test
    void eachSaysMixSourceMassTrialAndDay() {
        for (Paper paper : new Paper[] {Paper.A4, Paper.LETTER}) {
            String text = Presses.text(new SampleLabels(Sheets.usual(3), DAY), paper, Locale.ENGLISH);
            assertThat(text).contains("TW-214", "4900 g", "7350 g", "Trial 1 of 3", "Trial 3 of 3", "2026-11-29");
            assertThat(text.split("4900 g", -1)).hasSize(4);
            assertThat(text.split("2026-11-29", -1)).hasSize(7);
        }
        assertThat(Presses.text(new SampleLabels(Sheets.usual(1), DAY), Paper.A4, Locale.GERMAN))
                .contains("Versuch 1 von 1");
    }

    /** 22 labels are one more than a sheet of 21 holds. */
    @Test
    void twentyOneStandOnASheet() {
        assertThat(pages(10)).isEqualTo(1);
        assertThat(pages(11)).isEqualTo(2);
        assertThat(pages(30)).isEqualTo(3);
    }

    private static int pages(int trials) {
        return PageText.runs(Presses.pdf(new SampleLabels(Sheets.usual(trials), DAY), Paper.A4, Locale.ENGLISH))
                .stream()
                .mapToInt(PageText.Run::page)
                .max()
                .orElse(0);
    }
}
