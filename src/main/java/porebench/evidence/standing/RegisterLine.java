package porebench.evidence.standing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import porebench.evidence.CoveredSpell;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.Lent;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.ShownUncertainty;
import porebench.evidence.TrialsBehind;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.GroupGround;
import porebench.record.book.Version;
import porebench.record.id.GroupId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * The line of one mix in the register at every moment, as long as nothing is kept that changes it: a row holds from a moment on,
 * until the next one does. A new one begins where a revision takes effect, is due to be checked again or lapses by any rule, where a
 * source becomes another stone, and where the mix tested for its group has another revision.
 */
final class RegisterLine {
    /** How many parts of its text stand before the rows. */
    private static final int HEAD = 5;

    private final NavigableMap<LocalDateTime, RegisterRow> rows;
    private final LocalDate known;
    private final List<CoveredSpell> covered;

    /**
     * Puts it together.
     *
     * @param known the first day on which the lab book knew the mix, by UTC
     * @param covered the times in which it had a factor that might be used
     */
    private RegisterLine(NavigableMap<LocalDateTime, RegisterRow> rows, LocalDate known, List<CoveredSpell> covered) {
        this.rows = rows;
        this.known = known;
        this.covered = List.copyOf(covered);
    }

    /** Returns the line of a mix of which everything is known. */
    static RegisterLine of(Evidence evidence) {
        SortedSet<LocalDateTime> moments = new TreeSet<>();
        moments.add(LocalDateTime.MIN);
        for (Version<FactorIssue> version : evidence.issues()) {
            FactorIssue issue = version.value();
            moments.add(issue.inForceFrom().atStartOfDay());
            moments.add(issue.begins());
            if (issue.isIssue()) {
                evidence.recheck(issue).days().forEach(day -> moments.add(day.atStartOfDay()));
            }
            Lent.of(evidence, issue).stream()
                    .flatMap(lent -> lent.issues().stream())
                    .map(Version::value)
                    .forEach(other -> moments.addAll(List.of(other.inForceFrom().atStartOfDay(), other.begins())));
        }
        evidence.stones().stream()
                .flatMap(story -> story.periods().stream())
                .forEach(period -> period.from().ifPresent(day -> moments.add(day.atStartOfDay())));
        NavigableMap<LocalDateTime, RegisterRow> rows = new TreeMap<>();
        for (LocalDateTime moment : moments) {
            RegisterRow row = RegisterRow.of(evidence, moment);
            if (rows.isEmpty() || !rows.lastEntry().getValue().equals(row)) {
                rows.put(moment, row);
            }
        }
        LocalDate kept = evidence.firstKept().atOffset(ZoneOffset.UTC).toLocalDate();
        LocalDate known = evidence.issues().stream()
                .map(version -> version.value().inForceFrom())
                .filter(from -> from.isBefore(kept))
                .min(Comparator.naturalOrder())
                .orElse(kept);
        return new RegisterLine(rows, known, CoveredSpell.of(evidence));
    }

    /** Returns the first day on which the mix counts: the first of its factor, or that on which its design was kept. */
    LocalDate known() {
        return known;
    }

    /** Returns the times in which the mix had a factor that might be used, the first one first. */
    List<CoveredSpell> covered() {
        return covered;
    }

    /** Returns the row of a day, at its end. */
    RegisterRow on(LocalDate day) {
        return at(Moments.endOf(day));
    }

    /** Returns the row of a moment. */
    RegisterRow at(LocalDateTime moment) {
        return rows.floorEntry(moment).getValue();
    }

    /** Returns the first moment after one at which another row begins; empty when none does. */
    Optional<LocalDateTime> changesAfter(LocalDateTime moment) {
        return Optional.ofNullable(rows.higherKey(moment));
    }

    /** Returns the line as a text. */
    String text() {
        RegisterRow any = rows.firstEntry().getValue();
        List<String> parts = new ArrayList<>(List.of(
                any.mixId().text(),
                any.title(),
                any.plant(),
                known.toString(),
                Joined.of(covered.stream()
                        .flatMap(spell -> Stream.of(spell.from(), spell.untilExclusive()))
                        .map(LocalDate::toString)
                        .toList())));
        rows.forEach((from, row) -> parts.add(Joined.of(List.of(
                from.equals(LocalDateTime.MIN) ? "" : from.toString(),
                row.state().name(),
                or(row.factorPercent()),
                or(row.revision()),
                or(row.inForceFrom()),
                or(row.recheckBy()),
                trials(row.trials()),
                or(row.uncoveredSince()),
                problems(row.missing()),
                row.terms().atText(),
                row.terms().conditions(),
                row.terms().checkedBy(),
                row.group().map(RegisterLine::group).orElse(""),
                uncertainty(row.uncertainty()),
                problems(row.due())))));
        return Joined.of(parts);
    }

    private static String group(GroupGround ground) {
        return Joined.of(List.of(
                ground.group().text(),
                Integer.toString(ground.version()),
                ground.testedMix().text()));
    }

    private static GroupGround group(String text) {
        List<String> cells = Joined.parts(text);
        return new GroupGround(new GroupId(cells.get(0)), Integer.parseInt(cells.get(1)), new MixId(cells.get(2)));
    }

    private static String trials(TrialsBehind trials) {
        return Joined.of(List.of(
                Integer.toString(trials.counted()),
                Joined.of(trials.meters().stream().map(MeterId::text).toList()),
                or(trials.firstOn()),
                or(trials.lastOn())));
    }

    private static String uncertainty(ShownUncertainty shown) {
        return shown.equals(ShownUncertainty.NONE)
                ? ""
                : Joined.of(List.of(
                        or(shown.expandedPercent()),
                        or(shown.coverageFactor()),
                        shown.note().map(WrittenProblem::of).orElse("")));
    }

    private static ShownUncertainty uncertainty(String text) {
        if (text.isEmpty()) {
            return ShownUncertainty.NONE;
        }
        List<String> cells = Joined.parts(text);
        return new ShownUncertainty(
                some(cells.get(0), BigDecimal::new),
                some(cells.get(1), BigDecimal::new),
                some(cells.get(2), WrittenProblem::read));
    }

    private static TrialsBehind trials(String text) {
        List<String> cells = Joined.parts(text);
        return new TrialsBehind(
                Integer.parseInt(cells.get(0)),
                Joined.parts(cells.get(1)).stream().map(MeterId::new).toList(),
                some(cells.get(2), LocalDate::parse),
                some(cells.get(3), LocalDate::parse));
    }

    private static List<CoveredSpell> spells(String text) {
        List<LocalDate> days = Joined.parts(text).stream().map(LocalDate::parse).toList();
        List<CoveredSpell> spells = new ArrayList<>();
        for (int i = 0; i < days.size(); i += 2) {
            spells.add(new CoveredSpell(days.get(i), days.get(i + 1)));
        }
        return spells;
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    /**
     * Returns the line of a text.
     *
     * @throws RuntimeException if that is no such text
     */
    static RegisterLine read(String text) {
        List<String> parts = Joined.parts(text);
        MixId mix = new MixId(parts.get(0));
        NavigableMap<LocalDateTime, RegisterRow> rows = new TreeMap<>();
        for (String part : parts.subList(HEAD, parts.size())) {
            List<String> cells = Joined.parts(part);
            rows.put(
                    cells.get(0).isEmpty() ? LocalDateTime.MIN : LocalDateTime.parse(cells.get(0)),
                    new RegisterRow(
                            mix,
                            parts.get(1),
                            parts.get(2),
                            FactorState.valueOf(cells.get(1)),
                            some(cells.get(2), BigDecimal::new),
                            some(cells.get(3), Integer::valueOf),
                            some(cells.get(4), LocalDate::parse),
                            some(cells.get(5), LocalDate::parse),
                            trials(cells.get(6)),
                            some(cells.get(7), LocalDate::parse),
                            problems(cells.get(8)),
                            new FactorTerms(FactorTerms.time(cells.get(9)), cells.get(10), cells.get(11)),
                            some(cells.get(12), RegisterLine::group),
                            uncertainty(cells.get(13)),
                            problems(cells.get(14))));
        }
        return new RegisterLine(rows, LocalDate.parse(parts.get(3)), spells(parts.get(4)));
    }

    private static <T> Optional<T> some(String text, Function<String, T> read) {
        return text.isEmpty() ? Optional.empty() : Optional.of(read.apply(text));
    }

    private static String problems(List<Problem> problems) {
        return Joined.of(problems.stream().map(WrittenProblem::of).toList());
    }

    private static List<Problem> problems(String text) {
        return Joined.parts(text).stream().map(WrittenProblem::read).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RegisterLine that
                && rows.equals(that.rows)
                && known.equals(that.known)
                && covered.equals(that.covered);
    }

    @Override
    public int hashCode() {
        return rows.hashCode();
    }

    @Override
    public String toString() {
        return rows.toString();
    }
}
