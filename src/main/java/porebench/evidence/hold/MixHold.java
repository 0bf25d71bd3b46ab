package porebench.evidence.hold;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.method.Answer;
import porebench.method.Dates;
import porebench.method.Problem;
import porebench.method.RoundingRule;
import porebench.method.hold.AirPair;
import porebench.method.hold.Hold;
import porebench.method.sample.AirFreeDensity;
import porebench.quantity.Density;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * Whether the factor of a mix still holds, by its field readings with a density beside them since the revision in force.
 *
 * @param mixId the mix
 * @param spell the time whose pairs are charted
 * @param airFree the density of the mix without air, in kg/m3: of the design in that time
 * @param pairs the pairs in the order of time, each as its reading with both airs
 * @param hold the chart of them, point by point
 * @param notCorrected how many readings with a density have no corrected air, because no factor might be used at their time
 * @param earlier how many pairs stand before this time, since the revision in force
 */
public record MixHold(
        MixId mixId, HoldSpell spell, Density airFree, List<Pair> pairs, Hold hold, int notCorrected, int earlier) {
    private static final int DECIMALS = 1;

    public MixHold {
        pairs = List.copyOf(pairs);
    }

    /**
     * A reading beside its density.
     *
     * @param reading the reading
     * @param corrected its air by the meter
     * @param air both airs
     */
    public record Pair(FieldReading reading, Correcting.Corrected corrected, AirPair air) {}

    /**
     * Charts the pairs of a mix.
     *
     * @param evidence what is known of the mix
     * @param moment until when, by the laboratory's clock
     * @return the chart with what is doubted about it; refused where no factor is in force or the density of the mix without air
     *     is not known
     */
    public static Answer<MixHold> of(Records book, Evidence evidence, LocalDateTime moment) {
        String mix = evidence.mix().value().id().text();
        List<FieldReading> readings = book.latestOf(Belonging.READINGS_OF_MIX, mix).stream()
                .map(Version::value)
                .toList();
        return of(book.history(MixDesign.class, mix), evidence, readings, Correcting.by(evidence), moment);
    }

    /** Charts pairs out of the readings of a mix, in any order. */
    static Answer<MixHold> of(
            List<Version<MixDesign>> mixes,
            Evidence evidence,
            List<FieldReading> readings,
            Correcting correcting,
            LocalDateTime moment) {
        MixId mix = evidence.mix().value().id();
        Optional<HoldSpell> spell = HoldSpell.at(evidence, mixes, moment);
        if (spell.isEmpty()) {
            return Answer.refused(List.of(Problem.error("factor", "hold.no-factor", mix.text(), Dates.minute(moment))));
        }
        Answer<Density> airFree =
                AirFreeDensity.of(HoldSpell.mixAt(mixes, moment).value().batch());
        if (airFree.value().isEmpty()) {
            List<Problem> why = new ArrayList<>();
            why.add(Problem.error("mix", "hold.no-air-free", mix.text()));
            why.addAll(airFree.problems());
            return Answer.refused(why);
        }
        return Answer.of(
                charted(mix, spell.get(), airFree.value().get(), evidence, readings, correcting, moment), List.of());
    }

    private static MixHold charted(
            MixId mix,
            HoldSpell spell,
            Density airFree,
            Evidence evidence,
            List<FieldReading> readings,
            Correcting correcting,
            LocalDateTime moment) {
        List<FieldReading> dense = readings.stream()
                .filter(reading -> isPaired(reading, spell.issue().begins(), moment))
                .sorted(Comparator.comparing(FieldReading::readAt).thenComparing(FieldReading::id))
                .toList();
        List<Pair> pairs = new ArrayList<>();
        int notCorrected = 0;
        int earlier = 0;
        for (FieldReading reading : dense) {
            if (reading.readAt().isBefore(spell.from())) {
                earlier++;
                continue;
            }
            Optional<Correcting.Corrected> corrected = correcting.of(reading);
            if (corrected.isEmpty()) {
                notCorrected++;
            } else {
                pairs.add(new Pair(reading, corrected.get(), pair(reading, corrected.get(), airFree)));
            }
        }
        RoundingRule rule = evidence.profile().factorRounding();
        return new MixHold(
                mix,
                spell,
                airFree,
                pairs,
                Hold.of(pairs.stream().map(Pair::air).toList(), rule.step().doubleValue() / 2),
                notCorrected,
                earlier);
    }

    /** Returns whether a reading counts, has a density beside it and lies in a time, both ends included. */
    static boolean isPaired(FieldReading reading, LocalDateTime from, LocalDateTime until) {
        return reading.counts()
                && reading.density().isPresent()
                && !reading.readAt().isBefore(from)
                && !reading.readAt().isAfter(until);
    }

    private static AirPair pair(FieldReading reading, Correcting.Corrected corrected, Density airFree) {
        return AirPair.of(
                reading.id().text(),
                corrected.airPercent(),
                airFree,
                reading.density().orElseThrow().value());
    }

    /** Returns what is to be said beside the chart: what began its time, and which readings are not in it. */
    public List<Problem> notes() {
        List<Problem> notes = new ArrayList<>();
        if (earlier > 0) {
            spell.note().ifPresent(notes::add);
        }
        if (notCorrected > 0) {
            notes.add(Problem.warning("readings", "hold.not-corrected", notCorrected, Dates.minute(spell.from())));
        }
        pairs.stream()
                .map(Pair::air)
                .filter(AirPair::isDoubted)
                .forEach(pair -> notes.add(Problem.warning(
                        "density",
                        "hold.density-doubted",
                        pair.name(),
                        percent(pair.gravimetricPercent(), DECIMALS),
                        percent(AirPair.LEAST_GRAVIMETRIC, 0))));
        return notes;
    }

    static BigDecimal percent(double value, int decimals) {
        return RoundingRule.withoutNoise(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    /** Returns that the factor is to be checked again, by how much and how sure; empty where nothing asks for it. */
    public Optional<HoldRemark> remark() {
        return hold.shift()
                .map(shift -> new HoldRemark(
                        mixId, shift, pairs.get(shift.from()).reading().readAt(), hold.charted()));
    }
}
