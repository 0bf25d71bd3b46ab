package porebench.print;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.evidence.paper.FieldList;
import porebench.evidence.paper.SievedAirs;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.record.FieldReading;
import porebench.record.Laboratory;
import porebench.record.chain.Head;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;

/** Lists of field readings to be printed. */
public final class FieldLists {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private FieldLists() {}

    /** Returns the list of an invented laboratory: every fifth reading is not corrected, one is struck. */
    public static FieldList usual(int lines) {
        return of(Calibrations.Laboratories.USUAL, lines, "12", "The factor of HG-103 had lapsed.", Optional.empty());
    }

    public static FieldList guarded(int lines) {
        return of(Calibrations.Laboratories.USUAL, lines, "12", "", Optional.of(new BigDecimal("2")));
    }

    public static FieldList everythingLong(int lines) {
        return of(
                Calibrations.Laboratories.LONG,
                lines,
                Cards.LONG_TITLE,
                Cards.LONG_TITLE.repeat(4),
                Optional.of(new BigDecimal("2")));
    }

    public static FieldList training() {
        return of(Calibrations.Laboratories.TRAINING, 40, "12", "Nobody approved revision 1.", Optional.empty());
    }

    public static FieldList empty() {
        return of(Calibrations.Laboratories.USUAL, 0, "", "", Optional.empty());
    }

    private static FieldList of(
            Laboratory laboratory, int lines, String truck, String note, Optional<BigDecimal> guard) {
        return new FieldList(
                Optional.of(laboratory),
                DAY.atTime(14, 30),
                new FieldList.Days(DAY.minusDays(29), DAY),
                guard.map(any -> new MixId("HG-101")),
                guard,
                IntStream.range(0, lines)
                        .mapToObj(number -> line(number, truck, note))
                        .toList(),
                Head.of("3f2a91c077de0b1c", 1_234));
    }

    private static FieldList.Line line(int number, String truck, String note) {
        boolean isMarked = number % 5 == 4;
        boolean isStruck = number == 3;
        FieldReading reading = new FieldReading(
                new ReadingId("HG-101/" + number),
                new MixId("HG-" + (101 + number % 3)),
                LocalDateTime.of(2026, 11, 20, 7 + number % 9, 15, 20),
                truck,
                isMarked ? Optional.empty() : Optional.of(new MeterId("B-2")),
                new BigDecimal("6." + number % 10),
                number % 2 == 0
                        ? Optional.of(Typed.of("2310", DensityUnit.KILOGRAM_PER_CUBIC_METRE))
                        : Optional.empty(),
                Optional.of(new BigDecimal("19.5")),
                number == 1 ? "at the pump" : "",
                number == 2 ? Optional.of("the phone was an hour behind") : Optional.empty(),
                isStruck ? Optional.of("the clamp leaked") : Optional.empty());
        Optional<FieldList.Air> air = isMarked || isStruck
                ? Optional.empty()
                : Optional.of(new FieldList.Air(
                        2,
                        new BigDecimal("0.3"),
                        new BigDecimal("5." + (number + 7) % 10),
                        Optional.of(new BigDecimal("0.25")),
                        number == 2
                                ? Optional.of(new SievedAirs.Spread(new BigDecimal("4.1"), new BigDecimal("6.6")))
                                : Optional.empty()));
        return new FieldList.Line(
                reading,
                air,
                isStruck ? "struck" : isMarked ? "not-corrected" : "passes",
                isStruck ? "struck" : isMarked ? "not corrected" : "within the limits",
                isStruck ? List.of("the clamp leaked") : isMarked ? List.of(note) : List.of());
    }
}
