package porebench.desk.meter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.desk.DeskModel;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.method.meter.BowlFill;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.quantity.LengthUnit;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Unit;
import porebench.record.MeterCalibration;

/** Says what was written down at a calibration, masses, volumes and pressures with the digits and units of the day. */
final class MeasuredWords {
    private final DeskModel desk;
    private final Numbers numbers;
    private final Texts texts;

    MeasuredWords(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.numbers = desk.tools().numbers();
        this.texts = texts;
    }

    /** Returns the sentences of a calibration. */
    List<String> of(MeterCalibration calibration) {
        List<String> said = new ArrayList<>();
        calibration
                .elevationMetres()
                .ifPresent(metres -> said.add(texts.get(
                        "detail.elevation",
                        in(metres, LengthUnit.METRE, desk.units().elevation(), 0))));
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
                in(fill.waterCelsius(), TemperatureUnit.CELSIUS, desk.units().temperature(), 1));
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

    /** Returns a number that is kept in one unit as it is in that of the screen. */
    private <Q> String in(BigDecimal number, Unit<Q> kept, Unit<Q> shown, int decimals) {
        String degree = shown instanceof TemperatureUnit ? "°" : "";
        return numbers.show(new Typed<>(number, kept), shown, decimals) + " " + degree + shown.symbol();
    }

    private String number(BigDecimal typed) {
        return numbers.show(typed);
    }
}
