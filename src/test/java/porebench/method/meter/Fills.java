package porebench.method.meter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;

/** Weighings and dial checks as tests write them. */
final class Fills {
    private Fills() {}

    static Optional<BigDecimal> number(String digits) {
        return Optional.of(new BigDecimal(digits));
    }

    static Typed<Mass> kilograms(String digits) {
        return Typed.of(digits, MassUnit.KILOGRAM);
    }

    static BowlFill fill(String empty, String plate, String full, String celsius) {
        return new BowlFill(kilograms(empty), kilograms(plate), kilograms(full), new BigDecimal(celsius));
    }

    static BowlFills plain(BowlFill... fills) {
        return new BowlFills(
                List.of(fills), false, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    static CheckPoint point(String number, CheckAmount.Unit unit, String reading) {
        return new CheckPoint(new CheckAmount(new BigDecimal(number), unit), new BigDecimal(reading));
    }

    /** A dial check in mL, each point written as amount and reading. */
    static DialCheck millilitres(String... amountsAndReadings) {
        List<CheckPoint> points = new ArrayList<>();
        for (int i = 0; i < amountsAndReadings.length; i += 2) {
            points.add(point(amountsAndReadings[i], CheckAmount.Unit.MILLILITRE, amountsAndReadings[i + 1]));
        }
        return check(points);
    }

    static DialCheck check(List<CheckPoint> points) {
        return new DialCheck(
                Optional.empty(),
                Optional.empty(),
                points,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
