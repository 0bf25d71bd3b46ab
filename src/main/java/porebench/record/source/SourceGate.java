package porebench.record.source;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.Source;
import porebench.record.SourceStep;

/**
 * What a new version of a source may be: one rule for window, command line and files. Whatever the stone is known by can only be
 * altered by saying whether it is another stone from a day on or was mistaken, and why.
 */
public final class SourceGate {
    /** A change farther ahead than so many months is taken for a slip of the pen. */
    public static final int MONTHS_AHEAD = 12;

    /** A change farther back than so many months is doubted. */
    public static final int MONTHS_BACK = 12;

    private final SourceStory before;
    private final Source next;
    private final LocalDate today;
    private final List<Problem> problems = new ArrayList<>();

    private SourceGate(SourceStory before, Source next, LocalDate today) {
        this.before = before;
        this.next = next;
        this.today = today;
    }

    /**
     * Returns what is wrong or doubtful about a new version of a source, under the fields of its form.
     *
     * @param before what the source was until now
     * @param next the new version
     * @param today the day on which it is to be kept
     */
    public static List<Problem> check(SourceStory before, Source next, LocalDate today) {
        SourceGate gate = new SourceGate(before, next, today);
        gate.look();
        return List.copyOf(gate.problems);
    }

    private Source there() {
        return before.newest().value();
    }

    private void error(String field, String code, Object... values) {
        problems.add(Problem.error(field, code, values));
    }

    private void doubt(String field, String code, Object... values) {
        problems.add(Problem.warning(field, code, values));
    }

    private void look() {
        if (next.step().isEmpty()) {
            withoutStep();
            return;
        }
        boolean isOfTheVersionBefore = next.step().equals(there().step())
                && next.changedOn().equals(there().changedOn())
                && next.reason().equals(there().reason());
        boolean isHarmless = next.is(SourceStep.CORRECTED) && next.isSameStoneAs(there());
        if (isOfTheVersionBefore && !isHarmless) {
            // What was exported says the step of the version that is there: it is not done a second time.
            error(
                    "step",
                    "source.step-of-before",
                    next.id().text(),
                    before.newest().number());
            return;
        }
        if (next.reason().isEmpty()) {
            problems.add(
                    Problem.error("reason", "source.reason-wanting", next.id().text())
                            .of(Problem.Kind.NOT_YET));
        }
        switch (next.step().get()) {
            case CHANGED -> changed();
            case CORRECTED -> corrected();
            case WITHDRAWN -> withdrawn();
        }
    }

    private void withoutStep() {
        boolean saysWhen = !next.changedOn().equals(there().changedOn())
                && next.changedOn().isPresent();
        boolean saysWhy =
                !next.reason().equals(there().reason()) && next.reason().isPresent();
        if (!next.isSameStoneAs(there()) || saysWhen || saysWhy) {
            error(
                    "step",
                    "source.step-wanting",
                    next.id().text(),
                    before.newest().number());
        }
    }

    private void changed() {
        if (next.changedOn().isEmpty()) {
            problems.add(
                    Problem.error("changedOn", "source.date-wanting", next.id().text())
                            .of(Problem.Kind.NOT_YET));
            return;
        }
        day(next.changedOn().get(), before.last());
        if (next.place().equals(there().place()) && next.ledge().equals(there().ledge())) {
            doubt("ledge", "source.change-unnamed", next.id().text(), there().ledge());
        }
    }

    /** Looks at the first day of a stone beside the stone before it. */
    private void day(LocalDate day, SourcePeriod earlier) {
        earlier.from()
                .filter(from -> !day.isAfter(from))
                .ifPresent(from -> error(
                        "changedOn",
                        "source.change-not-after",
                        day.toString(),
                        next.id().text(),
                        from.toString()));
        LocalDate farthest = today.plusMonths(MONTHS_AHEAD);
        if (day.isAfter(farthest)) {
            error("changedOn", "source.change-too-far", day.toString(), farthest.toString());
        } else if (day.isBefore(today.minusMonths(MONTHS_BACK))) {
            doubt(
                    "changedOn",
                    "source.change-long-ago",
                    day.toString(),
                    next.id().text());
        } else if (day.isAfter(today)) {
            doubt(
                    "changedOn",
                    "source.change-to-come",
                    day.toString(),
                    next.id().text());
        }
    }

    private void corrected() {
        next.changedOn()
                .filter(day -> !before.last().from().equals(Optional.of(day)))
                .ifPresent(day -> {
                    List<SourcePeriod> periods = before.periods();
                    if (periods.size() > 1) {
                        day(day, periods.get(periods.size() - 2));
                    } else if (day.isAfter(today)) {
                        error(
                                "changedOn",
                                "source.first-day-to-come",
                                day.toString(),
                                next.id().text());
                    }
                });
        StoneLimits limits = StoneLimits.of(there().role());
        if (next.role() != there().role()) {
            doubt("role", "source.correction-of-role", next.id().text());
        }
        word("place", there().place(), next.place());
        word("ledge", there().ledge(), next.ledge());
        figure("relativeDensity", there().relativeDensity(), next.relativeDensity(), limits.relativeDensity());
        figure("absorption", there().absorptionPercent(), next.absorptionPercent(), limits.absorption());
    }

    private void word(String field, String was, String is) {
        if (!was.isBlank() && !Objects.equals(was, is)) {
            doubt(field, "source.correction-of-words", was, is, next.id().text());
        }
    }

    private void figure(String field, Optional<BigDecimal> was, Optional<BigDecimal> is, BigDecimal limit) {
        if (StoneLimits.areFar(was, is, limit)) {
            doubt(
                    field,
                    "source.correction-far",
                    was.orElseThrow(),
                    is.orElseThrow(),
                    limit,
                    next.id().text());
        }
    }

    private void withdrawn() {
        List<SourcePeriod> periods = before.periods();
        if (periods.size() == 1) {
            error("step", "source.nothing-to-withdraw", next.id().text());
            return;
        }
        if (next.changedOn().isPresent()) {
            error("changedOn", "source.withdrawal-with-day", next.id().text());
        }
        Source earlier = periods.get(periods.size() - 2).newest().value();
        if (!next.isSameStoneAs(earlier)) {
            doubt("ledge", "source.withdrawal-other-figures", next.id().text(), earlier.ledge());
        }
    }

    /** Returns the figures of the stone from before the last change, which its withdrawal brings back; empty without a change. */
    public static Optional<Source> beforeTheLastChange(SourceStory story) {
        List<SourcePeriod> periods = story.periods();
        return periods.size() == 1
                ? Optional.empty()
                : Optional.of(periods.get(periods.size() - 2).newest().value());
    }
}
