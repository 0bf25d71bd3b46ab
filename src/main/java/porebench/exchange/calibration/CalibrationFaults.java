package porebench.exchange.calibration;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCheck;
import porebench.method.profile.Profiles;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Tries out the measurements of one calibration, and notes what is wrong with them in the cells where it stands. */
final class CalibrationFaults {
    private static final Pattern OF_A_ROW = Pattern.compile("(fills|points)\\.(\\d+)\\.(\\w+)");

    /** Larger than any bowl: where the file does not weigh the bowl, the lab book knows it, and checks against it. */
    private static final Volume LARGER_THAN_ANY = Volume.of(1000, VolumeUnit.LITRE);

    private static final double ANY_DIVISION = 0.1;

    private final RowGroup group;
    private final List<HeadedRow> fillRows;
    private final List<HeadedRow> pointRows;
    private final Optional<HeadedRow> bowlRow;
    private final Optional<HeadedRow> dialRow;
    private final Optional<HeadedRow> columnRow;

    CalibrationFaults(
            RowGroup group,
            List<HeadedRow> fillRows,
            List<HeadedRow> pointRows,
            Optional<HeadedRow> bowlRow,
            Optional<HeadedRow> dialRow,
            Optional<HeadedRow> columnRow) {
        this.group = group;
        this.fillRows = fillRows;
        this.pointRows = pointRows;
        this.bowlRow = bowlRow;
        this.dialRow = dialRow;
        this.columnRow = columnRow;
    }

    /** Notes everything that is wrong; doubts are judged later. */
    void note(Optional<BowlFills> bowl, Optional<DialCheck> dial, Optional<ColumnCheck> column) {
        Profile any = Profiles.standard();
        Optional<Answer<BowlCalibration>> weighed = bowl.map(fills -> BowlCalibration.of(fills, any));
        weighed.ifPresent(answer -> note(answer.problems(), bowlRow));
        Optional<Volume> volume = weighed.flatMap(Answer::value).map(BowlCalibration::volume);
        dial.filter(check -> volume.isPresent() || isOrderKnown(check))
                .map(check -> DialCalibration.of(check, volume.orElse(LARGER_THAN_ANY), ANY_DIVISION, any))
                .ifPresent(answer -> note(answer.problems(), dialRow));
        column.map(check -> ColumnCalibration.of(check, any)).ifPresent(answer -> note(answer.problems(), columnRow));
    }

    /** Amounts in one unit can be put in order without knowing the bowl. */
    private static boolean isOrderKnown(DialCheck check) {
        Set<CheckAmount.Unit> units = new HashSet<>();
        check.points().forEach(point -> units.add(point.amount().unit()));
        return units.size() <= 1;
    }

    private void note(List<Problem> problems, Optional<HeadedRow> about) {
        problems.stream().filter(Problem::isError).forEach(problem -> {
            Matcher ofARow = OF_A_ROW.matcher(problem.field());
            if (ofARow.matches()) {
                List<HeadedRow> rows = ofARow.group(1).equals("fills") ? fillRows : pointRows;
                rows.get(Integer.parseInt(ofARow.group(2))).error(column(ofARow.group(3)), problem);
            } else {
                about.orElseGet(group::first).error(column(problem.field()), problem);
            }
        });
    }

    private static String column(String field) {
        return FileColumns.HEADINGS.getOrDefault(field, "row");
    }
}
