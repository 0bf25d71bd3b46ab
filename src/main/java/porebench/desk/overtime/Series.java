package porebench.desk.overtime;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.FactorHistory;
import porebench.evidence.FactorHistory.HistoryChange;
import porebench.evidence.FactorHistory.Made;
import porebench.evidence.MeterScale;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * The points of a control chart: the trials that count, one by one or by determination.
 *
 * @param points the points, the earliest first
 * @param references the means from which differences are taken where several mixes are put together, by mix; none else
 * @param late mixes whose reference is the mean of their first determination, as they began after the base period
 * @param unreferenced mixes left out, as they have nothing to take a reference from
 * @param alone how many determinations are left out of a chart of subgroups, as only one trial of theirs counts
 * @param notCounted trials that do not count: a person struck them, or their readings void them
 */
record Series(
        List<Point> points,
        Map<MixId, Double> references,
        List<MixId> late,
        List<MixId> unreferenced,
        int alone,
        List<Made> notCounted) {
    Series {
        points = List.copyOf(points);
        references = Map.copyOf(references);
        late = List.copyOf(late);
        unreferenced = List.copyOf(unreferenced);
        notCounted = List.copyOf(notCounted);
    }

    /**
     * A point.
     *
     * @param made its trials, the earliest first
     * @param values their factors, or differences, in % air
     * @param changes what changed since the point before
     */
    record Point(List<Made> made, List<Double> values, List<HistoryChange> changes) {
        Point {
            made = List.copyOf(made);
            values = List.copyOf(values);
            changes = List.copyOf(changes);
        }

        Made first() {
            return made.get(0);
        }

        LocalDate day() {
            return first().trial().testedAt().toLocalDate();
        }

        double mean() {
            return Arrays.stream(array()).average().orElseThrow();
        }

        double[] array() {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /** Returns how many trials a person struck. */
    int struck() {
        return (int)
                notCounted.stream().filter(made -> made.judged().isStruck()).count();
    }

    /** Returns how many trials are void by their readings. */
    int voided() {
        return notCounted.size() - struck();
    }

    /** Returns whether differences are charted and not factors. */
    boolean isDifference() {
        return !references.isEmpty();
    }

    boolean isSimulated() {
        return points.stream().anyMatch(point -> point.first().trial().simulated());
    }

    /** Returns the value of every point's first trial, which is its only one where single trials are charted. */
    double[] single() {
        return points.stream().mapToDouble(point -> point.values().get(0)).toArray();
    }

    /** Returns the determination of every point, numbered as they first come. */
    List<Integer> lots() {
        Map<DeterminationId, Integer> known = new HashMap<>();
        return points.stream()
                .map(point -> known.computeIfAbsent(point.first().determination(), any -> known.size()))
                .toList();
    }

    /** Returns the coarsest division of the meters used, in % air. */
    double divisionPercent() {
        return points.stream()
                .flatMap(point -> point.made().stream())
                .mapToDouble(Made::divisionPercent)
                .max()
                .orElse(MeterScale.USUAL_DIVISION_PERCENT);
    }

    /** Puts together the trials that a person wants charted. */
    static Series of(FactorHistory history, ChartChoice wishes) {
        FactorHistory wanted = history.where(made -> wishes.by().of(made).contains(wishes.id()));
        FactorHistory counted = wanted.where(made -> made.judged().counts());
        References references = References.of(counted, wishes);
        FactorHistory charted = counted.where(
                made -> !references.unreferenced().contains(made.trial().mixId()));
        List<Point> points =
                wishes.kind().isOfDeterminations() ? groups(charted, references) : singles(charted, references);
        return new Series(
                points,
                references.means(),
                references.late(),
                references.unreferenced(),
                wishes.kind().isOfDeterminations() ? groupsOf(charted).size() - points.size() : 0,
                wanted.where(made -> !made.judged().counts()).made());
    }

    private static List<Point> singles(FactorHistory charted, References references) {
        List<List<HistoryChange>> changes = charted.changes();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < charted.made().size(); i++) {
            Made made = charted.made().get(i);
            points.add(new Point(List.of(made), List.of(references.valueOf(made)), changes.get(i)));
        }
        return points;
    }

    private static List<Point> groups(FactorHistory charted, References references) {
        List<List<Made>> groups =
                groupsOf(charted).stream().filter(group -> group.size() > 1).toList();
        List<Made> firsts = groups.stream().map(group -> group.get(0)).toList();
        List<List<HistoryChange>> changes = new FactorHistory(firsts, charted.worked()).changes();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            List<Made> group = groups.get(i);
            points.add(new Point(group, group.stream().map(references::valueOf).toList(), changes.get(i)));
        }
        return points;
    }

    /** Returns the trials by their determinations, the one begun first before the others. */
    static List<List<Made>> groupsOf(FactorHistory charted) {
        Map<DeterminationId, List<Made>> groups = new LinkedHashMap<>();
        charted.made()
                .forEach(made -> groups.computeIfAbsent(made.determination(), any -> new ArrayList<>())
                        .add(made));
        return List.copyOf(groups.values());
    }
}
