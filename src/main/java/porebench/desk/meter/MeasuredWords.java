package porebench.desk.meter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.method.meter.BowlFill;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.quantity.Typed;
import porebench.record.MeterCalibration;

/** Says what was written down at a calibration, with the digits and units of the day. */
final class MeasuredWords {
    private final Numbers numbers;
    private final Texts texts;

    MeasuredWords(Numbers numbers, Texts texts) {
        this.numbers = numbers;
        this.texts = texts;
    }

    /** Returns the sentences of a calibration. */
    List<String> of(MeterCalibration calibration) {
        List<String> said = new ArrayList<>();
        calibration.elevationMetres().ifPresent(metres -> said.add(texts.get("detail.elevation", number(metres))));
        calibration.bowl().ifPresent(bowl -> {
            for (int i = 0; i < bowl.fills().size(); i++) {
                said.add(fill(i + 1, bowl.fills().get(i)));
            }
        });
        calibration.dial().ifPresent(dial -> {
            dial.vesselWater().ifPresent(water -> said.add(texts.get("detail.vessel", typed(water))));
            said.add(texts.get(
                    "detail.points",
                    String.join("; ", dial.points().stream().map(this::point).toList())));
            dial.initialLine().ifPresent(line -> said.add(texts.get("detail.line", number(line))));
            dial.leakMarks().ifPresent(marks -> said.add(texts.get("detail.leak", number(marks))));
        });
        calibration
                .column()
                .ifPresent(column -> said.add(texts.get(
                        "detail.column",
                        typed(column.vesselWater()),
                        typed(column.bowlWater()),
                        number(column.expansionPercent()),
                        typed(column.workingPressure()))));
        if (!calibration.remarks().isBlank()) {
            said.add(texts.get("detail.remarks", calibration.remarks()));
        }
        return said;
    }

    private String fill(int number, BowlFill fill) {
        return texts.get(
                "detail.fill",
                Integer.toString(number),
                typed(fill.empty()),
                typed(fill.plate()),
                typed(fill.full()),
                number(fill.waterCelsius()));
    }

    private String point(CheckPoint point) {
        return texts.get(
                "detail.point",
                number(point.amount().number()),
                isOneVessel(point.amount())
                        ? texts.get("unit.vessel")
                        : texts.get("unit." + point.amount().unit().symbol()),
                number(point.gaugePercent()));
    }

    private static boolean isOneVessel(CheckAmount amount) {
        return amount.unit() == CheckAmount.Unit.VESSELS && amount.number().compareTo(BigDecimal.ONE) == 0;
    }

    private String typed(Typed<?> typed) {
        return number(typed.number()) + " " + typed.unit().symbol();
    }

    private String number(BigDecimal typed) {
        return numbers.show(typed);
    }
}
