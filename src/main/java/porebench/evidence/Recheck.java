package porebench.evidence;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.quantity.Slack;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.Proportions;
import porebench.record.SourceMeasurement;
import porebench.record.production.Made;
import porebench.record.source.SourceStory;

/**
 * When a factor has to be checked again, by each rule of its laboratory, and why.
 *
 * <p>The day on the card makes a factor due some days before, and lapses it on the day after. New lots of one source, tonnes of
 * aggregate and production days count since the newest trial behind the factor: from the notice share of their number on it is due,
 * with the whole number it lapses. A season makes it due on its first day. The rules stand beside one another: the first one counts.
 */
public final class Recheck {
    private static final double WHOLE = 100;
    private static final String DATE = "date";

    private final Map<String, NavigableMap<LocalDate, Due>> rules = new TreeMap<>();

    /** How far it is with a rule. */
    public enum Level {
        /** Something keeps the rule from counting; the factor holds. */
        NOTE,
        /** It is seen coming; the factor holds. */
        COMING,
        /** It is to be checked again; the factor holds. */
        DUE,
        /** It should have been checked again; the factor no longer holds. */
        LAPSED
    }

    /**
     * What one rule says.
     *
     * @param from the day since which it is so far with the rule
     * @param level how far it is
     * @param why the reason
     */
    public record Due(LocalDate from, Level level, Problem why) {}

    private Recheck() {}

    /**
     * Works out the rules of a factor.
     *
     * @param profile whose rules hold
     * @param design the mix as it is now, by which concrete counts as aggregate
     * @param stones what its sources were
     * @param reported what was reported of the mix
     * @param since the day of the newest trial behind the factor
     * @param recheckBy the last day on its card
     */
    public static Recheck of(
            Profile profile,
            MixDesign design,
            List<SourceStory> stones,
            Reported reported,
            LocalDate since,
            LocalDate recheckBy) {
        Recheck recheck = new Recheck();
        Proportions mix = Proportions.of(design);
        recheck.date(profile, recheckBy);
        recheck.season(profile, since, recheckBy);
        int lots = profile.count(FigureName.RECHECK_LOTS);
        if (lots > 0) {
            stones.forEach(story ->
                    recheck.lots(profile, story, reported.measured().getOrDefault(story.id(), List.of()), since));
        }
        List<Production> made = reported.production().stream()
                .filter(spell -> Made.share(spell, since) > 0)
                .sorted(Comparator.comparing(Production::lastDay))
                .toList();
        Counted counted = new Counted(made, since, profile.number(FigureName.RECHECK_NOTICE_SHARE) / WHOLE);
        recheck.amounts(
                "register.recheck-tonnes",
                profile.number(FigureName.RECHECK_TONNES),
                counted,
                spell -> one(mix, spell, since).tonnesInAll());
        recheck.amounts(
                "register.recheck-days",
                profile.number(FigureName.RECHECK_PRODUCTION_DAYS),
                counted,
                spell -> one(mix, spell, since).productionDays());
        recheck.uncounted(
                "register.recheck-no-concrete",
                profile.number(FigureName.RECHECK_TONNES),
                made.stream()
                        .filter(spell ->
                                spell.volume().isEmpty() && spell.mass().isEmpty())
                        .toList());
        recheck.uncounted(
                "register.recheck-no-days",
                profile.number(FigureName.RECHECK_PRODUCTION_DAYS),
                made.stream().filter(spell -> spell.productionDays().isEmpty()).toList());
        return recheck;
    }

    /** Returns the day since which the rules count: that of the newest trial that counts, or else the first of the factor. */
    static LocalDate since(Optional<JudgedDetermination> judged, LocalDate inForceFrom) {
        return judged.flatMap(one -> TrialsBehind.of(one).lastOn()).orElse(inForceFrom);
    }

    /** The spells that count, the day after which they do, and the share of an amount from which it is due. */
    private record Counted(List<Production> spells, LocalDate since, double noticeShare) {}

    /** Returns the last day before a factor lapses where nobody decides another: the profile's months on, or the eve of a season. */
    public static LocalDate usualDay(Profile profile, LocalDate inForceFrom) {
        LocalDate months = inForceFrom.plusMonths(profile.count(FigureName.RECHECK_MONTHS));
        return profile.seasons()
                .firstAfter(inForceFrom)
                .map(start -> start.minusDays(1))
                .filter(eve -> eve.isBefore(months))
                .orElse(months);
    }

    private static Made one(Proportions mix, Production spell, LocalDate since) {
        return Made.of(mix, List.of(spell), since, spell.lastDay());
    }

    private void date(Profile profile, LocalDate recheckBy) {
        LocalDate notice = recheckBy.minusDays(profile.count(FigureName.RECHECK_NOTICE_DAYS));
        add(DATE, notice, Level.DUE, "recheckBy", "register.recheck-soon", recheckBy.toString());
        add(DATE, recheckBy.plusDays(1), Level.LAPSED, "recheckBy", "register.recheck-overdue", recheckBy.toString());
    }

    private void season(Profile profile, LocalDate since, LocalDate recheckBy) {
        Optional<LocalDate> first = profile.seasons().firstAfter(since);
        if (first.isEmpty()) {
            return;
        }
        LocalDate start = first.get();
        int notice = profile.count(FigureName.RECHECK_NOTICE_DAYS);
        if (notice > 0 && !start.isAfter(recheckBy)) {
            add("season", start.minusDays(notice), Level.COMING, "season", "register.season-begins", start.toString());
        }
        add("season", start, Level.DUE, "season", "register.season-began", start.toString(), since.toString());
    }

    private void lots(Profile profile, SourceStory story, List<SourceMeasurement> measured, LocalDate since) {
        int limit = profile.count(FigureName.RECHECK_LOTS);
        double share = profile.number(FigureName.RECHECK_NOTICE_SHARE) / WHOLE;
        Set<String> known = story.periods().stream()
                .limit(story.on(since).number())
                .map(period -> plain(period.newest().value().ledge()))
                .collect(Collectors.toCollection(HashSet::new));
        int fresh = 0;
        for (SourceMeasurement one : measured.stream()
                .sorted(Comparator.comparing(SourceMeasurement::testedOn))
                .toList()) {
            String lot = plain(one.lot());
            if (lot.isEmpty() || !known.add(lot) || !one.testedOn().isAfter(since)) {
                continue;
            }
            int count = ++fresh;
            level(count, limit, share)
                    .ifPresent(level -> add(
                            "lots " + story.id().text(),
                            one.testedOn(),
                            level,
                            "sources",
                            "register.recheck-lots",
                            count,
                            limit,
                            story.id().text(),
                            since.toString()));
        }
    }

    private static String plain(String lot) {
        return lot.strip().toLowerCase(Locale.ROOT);
    }

    private static Optional<Level> level(double reached, double limit, double noticeShare) {
        if (reached >= Slack.under(limit)) {
            return Optional.of(Level.LAPSED);
        }
        return reached >= Slack.under(limit * noticeShare) ? Optional.of(Level.DUE) : Optional.empty();
    }

    /** The words change where a level is reached, and say what was known last from the last spell on: no row of the register more. */
    private void amounts(String code, double limit, Counted counted, ToDoubleFunction<Production> amount) {
        if (limit <= 0) {
            return;
        }
        double reached = 0;
        Optional<Level> level = Optional.empty();
        LocalDate began = counted.since();
        for (int i = 0; i < counted.spells().size(); i++) {
            LocalDate day = counted.spells().get(i).lastDay();
            reached += amount.applyAsDouble(counted.spells().get(i));
            Optional<Level> now = level(reached, limit, counted.noticeShare());
            boolean isReached = !now.equals(level);
            if (isReached) {
                began = day;
                level = now;
            }
            if (now.isPresent() && (isReached || i == counted.spells().size() - 1)) {
                String since = counted.since().toString();
                Problem why = Problem.warning("production", code, shown(reached, limit), shown(limit, limit), since);
                add(code, day, new Due(began, now.get(), why));
            }
        }
    }

    /** Returns an amount as it is said: cut, so that no limit seems reached that is not. */
    private static BigDecimal shown(double amount, double limit) {
        BigDecimal cut = BigDecimal.valueOf(Slack.over(amount)).setScale(limit < WHOLE ? 1 : 0, RoundingMode.DOWN);
        return cut.signum() == 0
                ? BigDecimal.ZERO
                : new BigDecimal(cut.stripTrailingZeros().toPlainString());
    }

    private void uncounted(String code, double limit, List<Production> spells) {
        if (limit > 0 && !spells.isEmpty()) {
            add(
                    code,
                    spells.get(0).lastDay(),
                    Level.NOTE,
                    "production",
                    code,
                    spells.size(),
                    spells.get(0).id().text());
        }
    }

    private void add(String rule, LocalDate from, Level level, String field, String code, Object... values) {
        add(rule, from, new Due(from, level, Problem.warning(field, code, values)));
    }

    private void add(String rule, LocalDate from, Due due) {
        rules.computeIfAbsent(rule, any -> new TreeMap<>()).put(from, due);
    }

    /** Returns what the rules say on a day, the most pressing first, then what came first. */
    public List<Due> on(LocalDate day) {
        return rules.values().stream()
                .flatMap(steps -> Stream.ofNullable(steps.floorEntry(day)))
                .map(Map.Entry::getValue)
                .sorted(Comparator.comparing(Due::level, Comparator.reverseOrder())
                        .thenComparing(Due::from))
                .toList();
    }

    /** Returns the reasons of some levels on a day, in the order of {@link #on}. */
    public List<Problem> why(LocalDate day, Level... levels) {
        return on(day).stream()
                .filter(due -> List.of(levels).contains(due.level()))
                .map(Due::why)
                .toList();
    }

    /** Returns the reasons beside the day on its card for which a factor is due or no longer holds on a day. */
    public List<Problem> besideItsDay(LocalDate day) {
        return on(day).stream()
                .filter(due -> due.level() == Level.DUE || due.level() == Level.LAPSED)
                .filter(due -> rules.getOrDefault(DATE, new TreeMap<>()).values().stream()
                        .noneMatch(due::equals))
                .map(Due::why)
                .toList();
    }

    /** Returns how it stands by these rules alone with a factor in force on a day. */
    FactorState stateOn(LocalDate day) {
        Level level = on(day).stream().findFirst().map(Due::level).orElse(Level.NOTE);
        return switch (level) {
            case LAPSED -> FactorState.LAPSED;
            case DUE -> FactorState.RECHECK_DUE;
            case COMING, NOTE -> FactorState.IN_FORCE;
        };
    }

    /** Returns the first day on which the factor no longer holds by these rules. */
    LocalDate lapsesOn() {
        return steps().filter(due -> due.level() == Level.LAPSED)
                .map(Due::from)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Returns the days on which anything these rules say changes. */
    public Set<LocalDate> days() {
        return rules.values().stream().flatMap(steps -> steps.keySet().stream()).collect(Collectors.toSet());
    }

    private Stream<Due> steps() {
        return rules.values().stream().flatMap(steps -> steps.values().stream());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Recheck that && rules.equals(that.rules);
    }

    @Override
    public int hashCode() {
        return rules.hashCode();
    }

    @Override
    public String toString() {
        return rules.toString();
    }
}
