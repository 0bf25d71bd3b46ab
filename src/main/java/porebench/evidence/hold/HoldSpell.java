package porebench.evidence.hold;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.method.Dates;
import porebench.method.Problem;
import porebench.method.sample.AirFreeDensity;
import porebench.quantity.Density;
import porebench.quantity.Slack;
import porebench.quantity.Symbolic;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/**
 * The time whose pairs belong together: one revision of the factor, one stone of each source, one mix.
 *
 * <p>A version of the mix begins another time where its density without air or its aggregates are others, on the moment it was
 * kept, by UTC as in {@code CoveredSpell}: near it a pair may count to the other side. The first version counts for all before it.
 *
 * @param issue the revision in force
 * @param from the first moment, by the laboratory's clock
 * @param begun what began it
 * @param what the revision, source or version of the mix that began it, by name
 */
public record HoldSpell(FactorIssue issue, LocalDateTime from, Begun begun, String what) {
    /** What begins a time. */
    public enum Begun implements Symbolic {
        REVISION,
        STONE,
        MIX
    }

    /** Returns the time that a moment belongs to; empty where no factor is in force. */
    static Optional<HoldSpell> at(Evidence evidence, List<Version<MixDesign>> mixes, LocalDateTime moment) {
        return evidence.inForceAt(moment).map(issue -> {
            HoldSpell spell = new HoldSpell(issue, issue.begins(), Begun.REVISION, Integer.toString(issue.revision()));
            for (SourceStory story : evidence.stones()) {
                SourcePeriod stone = story.on(moment.toLocalDate());
                spell = spell.orLater(
                        stone.number() > 1 ? Optional.of(begins(stone)) : Optional.empty(),
                        moment,
                        Begun.STONE,
                        story.id().text());
            }
            Optional<Version<MixDesign>> changed = changed(mixes, moment);
            return spell.orLater(
                    changed.map(version -> kept(version)),
                    moment,
                    Begun.MIX,
                    changed.map(version -> Integer.toString(version.number())).orElse(""));
        });
    }

    private HoldSpell orLater(Optional<LocalDateTime> other, LocalDateTime moment, Begun by, String name) {
        return other.filter(at -> at.isAfter(from) && !at.isAfter(moment))
                .map(at -> new HoldSpell(issue, at, by, name))
                .orElse(this);
    }

    private static LocalDateTime begins(SourcePeriod stone) {
        return stone.from()
                .map(day -> day.atStartOfDay())
                .orElseGet(() -> LocalDateTime.ofInstant(stone.begun().stamp().at(), ZoneOffset.UTC));
    }

    private static LocalDateTime kept(Version<MixDesign> version) {
        return LocalDateTime.ofInstant(version.stamp().at(), ZoneOffset.UTC);
    }

    /** Returns the version of the mix that a moment belongs to: the newest kept by then, or else the first. */
    static Version<MixDesign> mixAt(List<Version<MixDesign>> mixes, LocalDateTime moment) {
        return mixes.stream()
                .filter(version -> !kept(version).isAfter(moment))
                .reduce((earlier, later) -> later)
                .orElse(mixes.get(0));
    }

    /** Returns the version that brought the concrete of a moment, unless it is the one of the first version. */
    private static Optional<Version<MixDesign>> changed(List<Version<MixDesign>> mixes, LocalDateTime moment) {
        Version<MixDesign> now = mixAt(mixes, moment);
        for (int i = mixes.indexOf(now); i > 0; i--) {
            if (!isSameConcrete(mixes.get(i - 1).value(), mixes.get(i).value())) {
                return Optional.of(mixes.get(i));
            }
        }
        return Optional.empty();
    }

    /** A design that lacked what its density without air needs is completed by the next one, and not another concrete. */
    private static boolean isSameConcrete(MixDesign one, MixDesign two) {
        Optional<Density> before = AirFreeDensity.of(one.batch()).value();
        Optional<Density> after = AirFreeDensity.of(two.batch()).value();
        return one.hasSameAggregatesAs(two)
                && (before.isEmpty()
                        || after.isEmpty()
                        || Slack.isSame(
                                before.get().kilogramsPerCubicMetre(),
                                after.get().kilogramsPerCubicMetre()));
    }

    /** Returns why pairs of before are not among its pairs; empty where a revision began it. */
    Optional<Problem> note() {
        return switch (begun) {
            case REVISION -> Optional.empty();
            case STONE -> Optional.of(Problem.warning("sources", "hold.begun-stone", Dates.minute(from), what));
            case MIX -> Optional.of(Problem.warning("mix", "hold.begun-mix", Dates.minute(from), what));
        };
    }
}
