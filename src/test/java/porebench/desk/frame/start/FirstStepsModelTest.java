package porebench.desk.frame.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Settings;
import porebench.record.Laboratory;
import porebench.record.SampleCalibrations;

class FirstStepsModelTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private final FirstStepsModel model = new FirstStepsModel(bench.desk, Settings.inMemory());

    @Test
    void whatTheLabBookHasIsDoneAndTheFirstOfTheRestIsNext() {
        assertThat(model.done()).contains(FirstStep.METER, FirstStep.MIX).doesNotContain(FirstStep.LABORATORY);
        assertThat(model.next()).contains(FirstStep.LABORATORY);
        bench.keep(new Laboratory("Quarry Lane Laboratory", "", false));
        bench.desk.refresh();
        assertThat(model.done()).contains(FirstStep.LABORATORY);
        assertThat(model.next()).contains(FirstStep.CALIBRATION);
        assertThat(model.isOpen(FirstStep.CALIBRATION)).isTrue();
        assertThat(model.isOpen(FirstStep.TRIAL)).isTrue();
        assertThat(model.isOpen(FirstStep.SOURCES)).isTrue();
    }

    @Test
    void aBowlAloneIsNoCalibratedMeterAndBothPagesSaySo() {
        bench.keep(new Laboratory("Quarry Lane Laboratory", "", false));
        bench.keep(SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"));
        bench.desk.refresh();
        assertThat(model.done()).doesNotContain(FirstStep.CALIBRATION);
        bench.keep(SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.00", "10.00"));
        bench.desk.refresh();
        assertThat(model.done()).contains(FirstStep.CALIBRATION);
    }

    @Test
    void nobodyIsLedAnyMoreOnceThereIsATrial() {
        assertThat(model.isWanted()).isTrue();
        bench.keep(BenchBook.determination(1, DAY), BenchBook.trial("T1", 1, DAY, "6.4"));
        bench.select();
        assertThat(model.done()).contains(FirstStep.TRIAL);
        assertThat(model.isWanted()).isFalse();
    }

    @Test
    void theListIsPutAwayForThisLabBookUntilSomebodyAsksForIt() {
        model.putAway(true);
        model.putAway(true);
        assertThat(model.isWanted()).isFalse();
        model.putAway(false);
        assertThat(model.isWanted()).isTrue();
    }

    @Test
    void anotherLabBookOfTheSameNameIsNotPutAwayWithIt() {
        bench.desk.unsaved().turnTo(Path.of("2025", "lab.porebench"), Map.of());
        model.putAway(true);
        bench.desk.unsaved().turnTo(Path.of("2026", "lab.porebench"), Map.of());
        assertThat(model.isWanted()).isTrue();
        model.putAway(true);
        model.putAway(false);
        bench.desk.unsaved().turnTo(Path.of("2025", "lab.porebench"), Map.of());
        assertThat(model.isWanted()).isFalse();
    }
}
