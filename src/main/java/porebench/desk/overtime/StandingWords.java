package porebench.desk.overtime;

import porebench.method.Texts;
import porebench.statistics.control.ChartTerms;

/** Says in one sentence how the factor stands over time. */
final class StandingWords {
    private final Charted outcome;
    private final Texts texts;
    private final SignalWords words;

    StandingWords(Charted outcome, SignalWords words, Texts texts) {
        this.outcome = outcome;
        this.words = words;
        this.texts = texts;
    }

    String sentence() {
        String said = plain();
        return outcome.series().isSimulated() ? texts.get("verdict.simulated", said) : said;
    }

    private String plain() {
        int points = outcome.series().points().size();
        String counted = texts.get(
                outcome.wishes().kind().isOfDeterminations() ? "points.determinations" : "points.trials", points);
        if (points == 0) {
            return texts.get(outcome.wishes().id().isBlank() ? "verdict.nothing" : "verdict.none");
        }
        // One determination has limits, from its own spread, but nothing to lie beside.
        if (points == 1 || outcome.limited().isEmpty()) {
            return texts.get(points == 1 ? "verdict.one" : "verdict.no-limits", counted);
        }
        String standing = standing(points, counted);
        int base = outcome.fewestInBase();
        return base < ChartTerms.FEWEST_FOR_LASTING_LIMITS
                ? texts.get("verdict.provisional", standing, base)
                : texts.get("verdict.plain", standing);
    }

    private String standing(int points, String counted) {
        int signalling = outcome.signalling();
        if (signalling == 0) {
            return texts.get("verdict.quiet", counted);
        }
        int last = outcome.signals().get(outcome.signals().size() - 1).index();
        String point = words.point(last);
        if (last == points - 1) {
            return texts.get("verdict.now", point, signalling, counted);
        }
        return texts.get("verdict.before", point, signalling, counted, points - 1 - last);
    }
}
