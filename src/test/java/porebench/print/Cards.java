package porebench.print;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardSeal;
import porebench.evidence.paper.FactorCard;
import porebench.method.MeterType;
import porebench.method.air.PassWindow;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FactorTerms;
import porebench.record.Grounds;
import porebench.record.Laboratory;
import porebench.record.TakenDoubt;
import porebench.record.chain.Head;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** Factor cards for tests, of an invented laboratory. */
public final class Cards {
    public static final String LONG_TITLE =
            "Bridge deck and barrier concrete, air-entrained, 35 MPa, 20 mm crushed stone with two"
                    + " sands, retarded for summer placing, pumped, second revision of the autumn proportions";

    private static final Head HEAD = Head.of("3f2a91c077de0b1c55aa", 214);

    private Cards() {}

    /** Returns a card in another state. */
    public static FactorCard in(CardState state, FactorCard card) {
        return new FactorCard(
                        card.laboratory(),
                        card.mixId(),
                        card.mixTitle(),
                        card.sources(),
                        card.issue(),
                        state,
                        card.lastDay(),
                        card.wetSieved(),
                        card.targetAirPercent(),
                        card.airTolerancePercent(),
                        card.divisionPercent(),
                        card.window(),
                        card.rule(),
                        card.head())
                .sealedBy(card.seal());
    }

    /** Returns a card whose doubts these people took on, each for two trials, with a reason. */
    public static FactorCard takenOn(FactorCard card, String reason, String... people) {
        List<TakenDoubt> taken = Stream.of(people)
                .flatMap(who -> Stream.of("T-1", "T-2")
                        .map(trial -> new TakenDoubt(
                                Optional.of(new TrialId(trial)), "trial.soak-off", "soaked 30 min", who, reason)))
                .toList();
        FactorIssue issue = card.issue().on(new Grounds(Map.of(), Map.of(), taken, FactorOrigin.HERE, false));
        return with(card, issue, card.wetSieved());
    }

    public static FactorCard usual() {
        return card("0.3", "6.0", "1.5", "0.1", "10");
    }

    public static FactorCard card(String factor, String target, String tolerance, String division, String top) {
        return card(
                new Laboratory("Tarnwick Materials Laboratory", "4 Kiln Road, Tarnwick"),
                "TW-214",
                "Bridge deck, 35 MPa, 20 mm stone",
                List.of("Orrin Pit sand", "Fell Quarry 5-20 mm"),
                false,
                new String[] {factor, target, tolerance, division, top});
    }

    public static FactorCard everythingLong(String factor, boolean wetSieved) {
        return card(
                new Laboratory(
                        "Tarnwick and Lower Ebber Valley Joint Materials Testing Laboratory, Concrete and Aggregates Section",
                        "4 Kiln Road"),
                "TW-214/2026-REV-C/BRIDGE-DECK-SUMMER-PUMPED-TWO-SANDS",
                LONG_TITLE,
                IntStream.rangeClosed(1, 8)
                        .mapToObj(n -> "Upper Fellside Quarry, working face " + n + ", washed 5-20 mm")
                        .toList(),
                wetSieved,
                new String[] {factor, "6.0", "1.5", "0.05", "10"});
    }

    /** Returns a card with these names, and as many sources of the same name as asked for. */
    public static FactorCard named(String laboratory, String mixId, String title, String source, int sources) {
        return card(
                new Laboratory(laboratory, ""),
                mixId,
                title,
                IntStream.range(0, sources).mapToObj(n -> source).toList(),
                sources % 2 == 0,
                new String[] {sources % 3 == 0 ? "-0.2" : "0.3", "6.0", "1.5", "0.1", "10"});
    }

    /** Returns a card out of a training book, with long names or the usual ones. */
    public static FactorCard training(String factor, boolean longNames) {
        FactorCard card = longNames ? everythingLong(factor, true) : card(factor, "6.0", "1.5", "0.1", "10");
        return new FactorCard(
                        Optional.of(Calibrations.Laboratories.TRAINING),
                        card.mixId(),
                        card.mixTitle(),
                        card.sources(),
                        card.issue(),
                        card.state(),
                        card.lastDay(),
                        card.wetSieved(),
                        card.targetAirPercent(),
                        card.airTolerancePercent(),
                        card.divisionPercent(),
                        card.window(),
                        card.rule(),
                        card.head())
                .sealedBy(card.seal());
    }

    /** Returns a card of another revision. */
    public static FactorCard of(FactorCard card, FactorIssue issue) {
        return with(card, issue, card.wetSieved());
    }

    /** The most that a lab book takes as standing conditions, 200 characters, as wide as they come. */
    public static final String WIDEST_CONDITIONS = "MIXWORKS MW ".repeat(16).strip() + " MWMWMWMW";

    /** Returns a card of a factor that somebody checked, on terms of an hour and of standing conditions. */
    public static FactorCard under(FactorCard card, String conditions) {
        FactorTerms terms = new FactorTerms(FactorTerms.time("14:30"), conditions, "P. Linden");
        return new FactorCard(
                card.laboratory(),
                card.mixId(),
                card.mixTitle(),
                card.sources(),
                card.issue().under(terms),
                card.state(),
                card.lastDay(),
                FactorTerms.time("07:05"),
                card.wetSieved(),
                card.sievedAirs(),
                card.targetAirPercent(),
                card.airTolerancePercent(),
                card.divisionPercent(),
                card.window(),
                card.rule(),
                card.head(),
                card.seal());
    }

    public static FactorCard wetSieved(FactorCard card) {
        return with(card, card.issue(), true);
    }

    /** Returns a card of a factor found on a Type A meter. */
    public static FactorCard typeA(FactorCard card) {
        return with(
                card,
                issue(
                        card.issue(),
                        card.issue().action(),
                        MeterType.A,
                        card.issue().approvedBy()),
                card.wetSieved());
    }

    public static FactorCard withIssue(FactorCard card, FactorIssue.Action action, String approvedBy) {
        return with(card, issue(card.issue(), action, card.issue().meterType(), approvedBy), card.wetSieved());
    }

    private static FactorIssue issue(FactorIssue old, FactorIssue.Action action, MeterType type, String approvedBy) {
        return new FactorIssue(
                old.mixId(),
                old.revision(),
                action,
                old.factorPercent(),
                old.determinationId(),
                type,
                old.inForceFrom(),
                old.recheckBy(),
                old.issuedBy(),
                approvedBy,
                old.reason(),
                old.mixVersion(),
                old.sourceVersions(),
                old.profileId(),
                "",
                "",
                Grounds.NONE);
    }

    private static FactorCard with(FactorCard card, FactorIssue issue, boolean wetSieved) {
        return new FactorCard(
                        card.laboratory(),
                        card.mixId(),
                        card.mixTitle(),
                        card.sources(),
                        issue,
                        card.state(),
                        card.lastDay(),
                        wetSieved,
                        card.targetAirPercent(),
                        card.airTolerancePercent(),
                        card.divisionPercent(),
                        card.window(),
                        card.rule(),
                        card.head())
                .sealedBy(card.seal());
    }

    public static FactorCard card(
            Laboratory laboratory,
            String mixId,
            String title,
            List<String> sources,
            boolean wetSieved,
            String[] figures) {
        BigDecimal factor = new BigDecimal(figures[0]);
        BigDecimal target = new BigDecimal(figures[1]);
        BigDecimal tolerance = new BigDecimal(figures[2]);
        BigDecimal division = new BigDecimal(figures[3]);
        return new FactorCard(
                        Optional.of(laboratory),
                        new MixId(mixId),
                        title,
                        sources,
                        issue(mixId, factor, title.length() > 60),
                        CardState.IN_FORCE,
                        LocalDate.of(2027, 11, 24),
                        wetSieved,
                        target,
                        tolerance,
                        division,
                        PassWindow.of(
                                factor, target, tolerance, division, new BigDecimal(figures[4]), Profiles.standard()),
                        Profiles.standard().title(),
                        HEAD)
                .sealedBy(Optional.of(new CardSeal(mixId + "/r3", "3f2a91c077de0b1c".repeat(4))));
    }

    private static FactorIssue issue(String mixId, BigDecimal factor, boolean longNames) {
        return new FactorIssue(
                new MixId(mixId),
                3,
                FactorIssue.Action.ISSUED,
                factor,
                new DeterminationId("D-17"),
                MeterType.B,
                LocalDate.of(2026, 11, 25),
                LocalDate.of(2027, 11, 24),
                longNames ? "Wilhelmina Oakenthwaite-Featherstonehaugh, senior technician (concrete)" : "R. Alder",
                longNames ? "Bartholomew Quillfeather-Winterbourne, quality manager" : "M. Thorne",
                "new ledge",
                4,
                Map.of(new SourceId("orrin"), 1),
                Profiles.DEFAULT_ID,
                "",
                "",
                Grounds.NONE);
    }
}
