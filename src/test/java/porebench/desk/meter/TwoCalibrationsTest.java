package porebench.desk.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.MixDesk;
import porebench.desk.Refused;
import porebench.desk.form.TwoVersions;
import porebench.desk.form.TwoVersions.Line;
import porebench.record.MeterCalibration;
import porebench.record.book.Version;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.MeterId;

/** Two people correct one calibration, its fills and points too. */
class TwoCalibrationsTest {
    private static final String ID = "C-1";

    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);
    private final DeskModel otherDesk = new DeskModel(mixDesk.desk.tools(), mixDesk.book);
    private CalibrationModel entry;
    private CalibrationModel there;

    /** A calibration of two fills and two points, which two desks correct. */
    @BeforeEach
    void open() {
        MeterModel model = new MeterModel(mixDesk.desk);
        model.open(new MeterId("B-1"));
        model.begin();
        entry = model.entry();
        entry.type(CalibrationColumns.ID, ID);
        entry.chooseUnit(CalibrationColumns.FILLS, "kg");
        fill(0, "3.500", "0.400", "10.920", "20");
        fill(1, "3.500", "0.400", "10.921", "20");
        entry.type(CalibrationColumns.VESSEL_WATER, "351.0");
        entry.chooseUnit(CalibrationColumns.VESSEL_WATER, "g");
        entry.type(CalibrationColumns.DIAL_WATER, "20");
        point(0, "1", "5.05");
        point(1, "2", "10.08");
        assertThat(entry.trySaving()).as(entry.shownProblems().toString()).isTrue();
        assertThat(Refused.by(out -> entry.save("first", out))).isEmpty();
        model.lookAt(ID);
        model.correctChosen();
        otherDesk.setPerson("N. Orrin");
        otherDesk.refresh();
        MeterModel other = new MeterModel(otherDesk);
        other.open(new MeterId("B-1"));
        other.lookAt(ID);
        other.correctChosen();
        there = other.entry();
        assertThat(there.base()).isPresent();
    }

    private void fill(int row, String... cells) {
        for (int column = 0; column < cells.length; column++) {
            entry.fills().type(row, CalibrationColumns.OF_FILL.columns().all().get(column), cells[column]);
        }
    }

    private void point(int row, String amount, String gauge) {
        entry.points().type(row, CalibrationColumns.AMOUNT, amount);
        entry.points().chooseUnit(row, CalibrationColumns.AMOUNT, "vessels");
        entry.points().type(row, CalibrationColumns.GAUGE, gauge);
    }

    private TwoVersions keptThere() {
        assertThat(there.trySaving()).as(there.shownProblems().toString()).isTrue();
        assertThat(Refused.by(out -> there.save("meanwhile", out))).isEmpty();
        mixDesk.desk.refresh();
        return entry.beside(entry.newer().orElseThrow());
    }

    private MeterCalibration saved(TwoVersions both) {
        List<Boolean> choice = both.lines().stream().map(Line::isTheirs).toList();
        entry.goOnFrom(entry.newer().orElseThrow(), "both", both.chosen(choice));
        assertThat(entry.trySaving()).isTrue();
        assertThat(Refused.by(out -> entry.save("both", out))).isEmpty();
        Version<MeterCalibration> newest =
                mixDesk.book.latest(MeterCalibration.class, ID).orElseThrow();
        assertThat(newest.number()).isEqualTo(3);
        return newest.value();
    }

    @Test
    void everyCellThatOneChangedStandsInTheEnd() {
        entry.fills().type(0, CalibrationColumns.FULL, "10.930");
        entry.points().type(1, CalibrationColumns.GAUGE, "10.07");
        there.points().type(1, CalibrationColumns.GAUGE, "10.09");
        there.points().type(2, CalibrationColumns.AMOUNT, "3");
        there.points().chooseUnit(2, CalibrationColumns.AMOUNT, "vessels");
        there.points().type(2, CalibrationColumns.GAUGE, "15.1");
        there.type(CalibrationColumns.REMARKS, "calm");
        TwoVersions both = keptThere();
        assertThat(both.lines())
                .extracting(Line::name)
                .containsExactly("Remarks", "Fill 1, full bowl", "Check point 2, dial", "Check points, row 3");
        assertThat(both.lines().get(2)).isEqualTo(new Line("Check point 2, dial", "10.08", "10.09", "10.07", false));
        assertThat(both.lines().get(3).theirs()).isEqualTo("3 vessels, 15.1");
        MeterCalibration kept = saved(both);
        assertThat(kept.remarks()).isEqualTo("calm");
        assertThat(both.chosen(List.of(true, false, true, false)).rows(CalibrationColumns.POINTS))
                .hasSize(2);
    }

    /** Numbers without their unit mean nothing. */
    @Test
    void fillsInAnotherUnitAreTakenWholeOrNotAtAll() {
        entry.fills().type(0, CalibrationColumns.FULL, "10.930");
        there.chooseUnit(CalibrationColumns.FILLS, "g");
        for (int row = 0; row < 2; row++) {
            there.fills().type(row, CalibrationColumns.EMPTY, "3500");
            there.fills().type(row, CalibrationColumns.PLATE, "400");
            there.fills().type(row, CalibrationColumns.FULL, "10925");
        }
        TwoVersions both = keptThere();
        assertThat(both.lines())
                .extracting(Line::name, Line::isTheirs)
                .containsExactly(tuple("Bowl: fills with water", false));
        assertThat(both.chosen(List.of(true)).unit(CalibrationColumns.FILLS)).isEqualTo("g");
        assertThat(both.chosen(List.of(true))
                        .rows(CalibrationColumns.FILLS)
                        .get(0)
                        .text(CalibrationColumns.FULL))
                .isEqualTo("10925");
        assertThat(both.chosen(List.of(false)).unit(CalibrationColumns.FILLS)).isEqualTo("kg");
    }

    @Test
    void aCorrectionOfWhichNothingIsTypedFollowsWhatSomebodyElseKept() {
        there.type(CalibrationColumns.REMARKS, "calm");
        assertThat(there.trySaving()).isTrue();
        assertThat(Refused.by(out -> there.save("meanwhile", out))).isEmpty();
        mixDesk.desk.refresh();
        assertThat(entry.base().map(Version::number)).contains(2);
        assertThat(entry.draft().text(CalibrationColumns.REMARKS)).isEqualTo("calm");
    }
}
