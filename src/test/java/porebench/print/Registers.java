package porebench.print;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.ShownUncertainty;
import porebench.evidence.TrialsBehind;
import porebench.evidence.custody.CardAlarms;
import porebench.evidence.paper.RegisterList;
import porebench.record.FactorTerms;
import porebench.record.Laboratory;
import porebench.record.chain.Head;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Factor registers to be printed. */
public final class Registers {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private Registers() {}

    /** Returns the register of an invented laboratory with a mix in each state, some of them several times. */
    public static RegisterList usual(int lines) {
        return of(
                Calibrations.Laboratories.USUAL,
                lines,
                "Bridge deck 40, 20 mm granite",
                "Trial B-0007 was corrected after the issue.");
    }

    public static RegisterList everythingLong(int lines) {
        return of(Calibrations.Laboratories.LONG, lines, Cards.LONG_TITLE, Cards.LONG_TITLE.repeat(4));
    }

    public static RegisterList training() {
        return of(Calibrations.Laboratories.TRAINING, 40, "Kerb 30", "Nobody approved revision 1.");
    }

    public static RegisterList empty() {
        return of(Calibrations.Laboratories.USUAL, 0, "", "");
    }

    private static RegisterList of(Laboratory laboratory, int lines, String title, String missing) {
        List<RegisterList.Line> rows = IntStream.range(0, lines)
                .mapToObj(number -> line(number, title, missing))
                .toList();
        return new RegisterList(
                Optional.of(laboratory),
                DAY.atTime(14, 30),
                rows,
                lines + 5,
                lines / 2,
                CardAlarms.NONE,
                Head.of("3f2a91c077de0b1c", 1_234));
    }

    private static RegisterList.Line line(int number, String title, String missing) {
        FactorState state = FactorState.values()[number % FactorState.values().length];
        boolean holds = state.isUsable();
        RegisterRow row = new RegisterRow(
                new MixId("HG-" + (101 + number)),
                title,
                "North plant",
                state,
                holds ? Optional.of(new BigDecimal("0.3")) : Optional.empty(),
                holds ? Optional.of(2) : Optional.empty(),
                holds ? Optional.of(DAY.minusDays(40)) : Optional.empty(),
                holds ? Optional.of(DAY.plusDays(320)) : Optional.empty(),
                new TrialsBehind(
                        3,
                        List.of(new MeterId("B-2"), new MeterId("B-3")),
                        Optional.of(DAY.minusDays(44)),
                        Optional.of(DAY.minusDays(42))),
                holds ? Optional.empty() : Optional.of(DAY.minusDays(number)),
                List.of(),
                FactorTerms.NONE,
                Optional.empty(),
                holds
                        ? new ShownUncertainty(
                                Optional.of(new BigDecimal("0.12345")),
                                Optional.of(new BigDecimal("2.1")),
                                Optional.empty())
                        : ShownUncertainty.NONE,
                List.of());
        return new RegisterList.Line(
                row, List.of(), holds ? List.of() : List.of(missing, "Nobody approved revision 1."));
    }
}
