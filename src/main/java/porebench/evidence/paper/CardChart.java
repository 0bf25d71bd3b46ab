package porebench.evidence.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.RoundingRule;
import porebench.method.air.AlignmentChart;
import porebench.method.air.PassWindow;

/**
 * The alignment chart on the back of a factor card: what its scales show, and how finely it can be read.
 *
 * <p>It has the readings of the card's table, from the lowest one on. Where air is reported to a finer step from some reading on, and
 * the chart cannot be read that finely, it ends before, and from there on there is only the table. A chart that cannot be read to half
 * of the step to which air is reported is not made.
 *
 * <p>How finely it is read is {@link #RULER_OFF} and half the width of a line, along the scale of air: common practice, no source.
 *
 * @param lines where everything lies, in millimetres of an A6 card; on paper it is larger by {@link CardSize#enlargement}
 * @param readings the scale of readings
 * @param airs the scale of air
 * @param factors the scale of G: the whole percents on both sides of it
 * @param tableFrom the highest reading of the chart, where the table goes on beyond it; empty where the chart has all readings
 * @param error by how much air is misread at most, in % air, rounded up to 0.01
 */
public record CardChart(
        AlignmentChart lines,
        Scale readings,
        Scale airs,
        Scale factors,
        Optional<BigDecimal> tableFrom,
        BigDecimal error) {
    /** How far off a ruler is laid, in millimetres along the scales. */
    public static final double RULER_OFF = 0.3;

    /** Width of the lines of the scales of an A6 card, in millimetres: 0.4 points. */
    public static final double LINE = 0.4 * 25.4 / 72;

    /** From the left edge of an A6 card to the scale of readings, in millimetres: numbers stand left of it. */
    public static final double LEFT = 17;

    /** From the scale of G to the right edge, in millimetres: numbers stand right of it. */
    public static final double RIGHT = 22;

    /** From the upper edge to the upper end of the scales, in millimetres. */
    public static final double TOP = 30;

    /** From the lower end of the scales to the lower edge, in millimetres. */
    public static final double BOTTOM = 23;

    /** A wallet card with nothing but scales has 4 mm above and below them; no more than this is asked of it. */
    private static final double WALLET_MARGINS = 8;

    /** Nearer than this, in millimetres, lines run together. */
    private static final double LEAST_GAP = 0.7;

    /** Nearer than this, in millimetres, the numbers of a scale touch. */
    private static final double LEAST_NUMBERS = 5.5;

    /** One percent of G is at most as many times as long as one percent of reading. */
    private static final double MOST_STRETCH = 4;

    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final List<BigDecimal> GRADUATIONS =
            List.of(new BigDecimal("0.05"), TENTH, new BigDecimal("0.25"), new BigDecimal("0.5"));
    private static final BigDecimal HALF = new BigDecimal("0.5");

    /**
     * What one scale shows.
     *
     * @param from its lowest value, in % air
     * @param to its highest value, in % air
     * @param graduation from one of its lines to the next, in % air
     * @param numberEvery from one of its numbers to the next, in whole % air
     */
    public record Scale(BigDecimal from, BigDecimal to, BigDecimal graduation, int numberEvery) {
        /** Returns the values that have a line, rising: multiples of the graduation. */
        public List<BigDecimal> marks() {
            List<BigDecimal> marks = new ArrayList<>();
            BigDecimal mark = from.divide(graduation, 0, RoundingMode.CEILING).multiply(graduation);
            for (; mark.compareTo(to) <= 0; mark = mark.add(graduation)) {
                marks.add(mark);
            }
            return marks;
        }

        /** Returns whether a value has a longer line: each half percent. */
        public boolean isHalf(BigDecimal value) {
            return value.remainder(HALF).signum() == 0;
        }

        /** Returns whether a value has the longest line: each whole percent. */
        public boolean isWhole(BigDecimal value) {
            return value.remainder(BigDecimal.ONE).signum() == 0;
        }

        /** Returns whether a value has its number beside it. */
        public boolean isNumbered(BigDecimal value) {
            return value.remainder(BigDecimal.valueOf(numberEvery)).signum() == 0;
        }
    }

    /**
     * Works out the chart of a card.
     *
     * @return the chart; refused where it could not be read to half the step to which air is reported, or the card has no side for it
     */
    public static Answer<CardChart> of(FactorCard card, CardSize size) {
        List<PassWindow.Row> all = card.window().rows();
        List<PassWindow.Row> coarse = all.stream()
                .takeWhile(row -> row.step().compareTo(all.get(0).step()) >= 0)
                .toList();
        Optional<CardChart> whole = made(card, size, all);
        Optional<CardChart> chart = whole.isPresent() ? whole : made(card, size, coarse);
        if (chart.isPresent() && size != CardSize.WALLET) {
            return Answer.of(chart.get(), List.of());
        }
        String mix = card.mixId().text();
        return Answer.refused(List.of(
                chart.isPresent()
                        ? Problem.error("size", "card.chart-no-side", mix, size.symbol())
                        : Problem.error(
                                "size",
                                "card.chart-too-fine",
                                mix,
                                size.symbol(),
                                shown(error(lines(card, size, all), size)),
                                finest(all))));
    }

    /** Returns the chart of some readings; empty where it cannot be read finely enough, or has none of the readings that pass. */
    private static Optional<CardChart> made(FactorCard card, CardSize size, List<PassWindow.Row> rows) {
        boolean hasPassing =
                card.window().lowestPassing().isEmpty() || rows.stream().anyMatch(PassWindow.Row::passes);
        if (rows.size() < 2 || !hasPassing) {
            return Optional.empty();
        }
        AlignmentChart lines = lines(card, size, rows);
        BigDecimal error = error(lines, size);
        return error.add(error).compareTo(finest(rows)) > 0
                ? Optional.empty()
                : Optional.of(of(card, rows, lines, shown(error)));
    }

    private static CardChart of(FactorCard card, List<PassWindow.Row> rows, AlignmentChart lines, BigDecimal error) {
        BigDecimal lowest = rows.get(0).reading();
        BigDecimal highest = rows.get(rows.size() - 1).reading();
        BigDecimal below = card.issue().factorPercent().setScale(0, RoundingMode.FLOOR);
        BigDecimal above = below.add(BigDecimal.ONE);
        boolean isAll = rows.size() == card.window().rows().size();
        return new CardChart(
                lines,
                scale(lowest, highest, card.divisionPercent(), lines.readingModulus()),
                scale(
                        lowest.subtract(above),
                        highest.subtract(below),
                        rows.get(0).step(),
                        lines.airModulus()),
                scale(below, above, TENTH, lines.factorModulus()),
                isAll ? Optional.empty() : Optional.of(highest),
                error);
    }

    private static AlignmentChart lines(FactorCard card, CardSize size, List<PassWindow.Row> rows) {
        double lowest = rows.get(0).reading().doubleValue();
        double highest = Math.max(
                rows.get(rows.size() - 1).reading().doubleValue(),
                lowest + card.divisionPercent().doubleValue());
        double enlargement = size.enlargement();
        double high = size.heightMillimetres() / enlargement;
        return new AlignmentChart(
                size.widthMillimetres() / enlargement - LEFT - RIGHT,
                high - (size == CardSize.WALLET ? WALLET_MARGINS : TOP + BOTTOM),
                lowest,
                highest,
                card.issue().factorPercent().doubleValue(),
                // A percent of G above or below the middle is no longer than half the height.
                Math.min(MOST_STRETCH, (highest - lowest) / 2));
    }

    private static BigDecimal error(AlignmentChart lines, CardSize size) {
        return RoundingRule.withoutNoise(lines.misreading(RULER_OFF / size.enlargement() + LINE / 2));
    }

    private static BigDecimal shown(BigDecimal error) {
        return error.setScale(2, RoundingMode.UP);
    }

    private static BigDecimal finest(List<PassWindow.Row> rows) {
        return rows.stream()
                .map(PassWindow.Row::step)
                .min(BigDecimal::compareTo)
                .orElseThrow();
    }

    /**
     * Chooses the lines and numbers of a scale.
     *
     * @param wish the graduation that is wished for; tenths where it leads to no whole percent, a coarser one where lines would run
     *     together
     * @param modulus the length of one percent
     */
    private static Scale scale(BigDecimal from, BigDecimal to, BigDecimal wish, double modulus) {
        BigDecimal first = BigDecimal.ONE.remainder(wish).signum() == 0 ? wish : TENTH;
        List<BigDecimal> offered = new ArrayList<>(List.of(first));
        GRADUATIONS.stream().filter(one -> one.compareTo(first) > 0).forEach(offered::add);
        BigDecimal graduation = offered.stream()
                .filter(one -> one.doubleValue() * modulus >= LEAST_GAP)
                .findFirst()
                .orElse(BigDecimal.ONE);
        int every = List.of(1, 2, 5, 10).stream()
                .filter(one -> one * modulus >= LEAST_NUMBERS)
                .findFirst()
                .orElse(20);
        return new Scale(from, to, graduation, every);
    }
}
