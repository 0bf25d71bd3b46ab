package porebench.command.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import porebench.command.reply.Ports;
import porebench.evidence.MeterStory;
import porebench.evidence.practice.PracticeBench;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.simulate.Bench;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * A simulated bench that knows its mix and its meter.
 *
 * @param ports the outer rooms
 * @param mixId the mix
 * @param meterId the meter; empty for an everyday meter of the type
 * @param type the type of the meter that was asked for; empty for that of the register
 * @param trueFactorPercent G, in % air
 */
record KnownBench(
        Ports ports, MixId mixId, Optional<MeterId> meterId, Optional<MeterType> type, double trueFactorPercent) {

    /** Makes the bench from a lab book: the meter as its register and calibrations state it on a day. */
    Answer<Bench> ofBook(Path file, LocalDate day) {
        try (LabBook book = ports.shelf().get().open(file)) {
            Optional<MixDesign> mix = book.latest(MixDesign.class, mixId.text()).map(Version::value);
            if (mix.isEmpty()) {
                return notIn(file, "mix", mixId.text());
            }
            if (meterId.isEmpty()) {
                return everyday(mix.get());
            }
            return MeterStory.of(book, meterId.get(), MeterStory.usualProfile(book))
                    .map(story -> otherType(story.meter().value())
                            .orElseGet(() -> PracticeBench.of(mix.get(), story, day, trueFactorPercent)))
                    .orElseGet(() -> notIn(file, "meter", meterId.get().text()));
        }
    }

    /** Makes the bench from a sheet of mixes and, if there is one, a sheet of meters. */
    Answer<Bench> ofSheets(Path mixes, @Nullable Path meters, List<Problem> problems) {
        Optional<MixDesign> mix = MixesOfFile.read(ports.sheets().get(), mixes).find(mixId, "mix", problems);
        if (mix.isEmpty()) {
            return Answer.refused(problems);
        }
        if (meters == null || meterId.isEmpty()) {
            return everyday(mix.get());
        }
        return ports.sheets().get().records(meters).values().stream()
                .filter(Meter.class::isInstance)
                .map(Meter.class::cast)
                .filter(meter -> meter.id().equals(meterId.get()))
                .findFirst()
                .map(meter -> otherType(meter)
                        .orElseGet(() -> PracticeBench.of(
                                mix.get(), meter.type(), meter.bowl(), meter.divisionPercent(), trueFactorPercent)))
                .orElseGet(() -> notIn(meters, "meter", meterId.get().text()));
    }

    private Answer<Bench> everyday(MixDesign mix) {
        Bench.Gauge gauge = Bench.Gauge.of(type.orElse(MeterType.B));
        return PracticeBench.of(mix, gauge.type(), gauge.bowl(), gauge.divisionPercent(), trueFactorPercent);
    }

    private Optional<Answer<Bench>> otherType(Meter meter) {
        return type.filter(asked -> asked != meter.type())
                .map(asked -> Answer.refused(List.of(Problem.error(
                        "meterType",
                        "command.meter-of-other-type",
                        meter.id().text(),
                        meter.type().name(),
                        asked.name()))));
    }

    private static Answer<Bench> notIn(Path file, String word, String id) {
        return Answer.refused(
                List.of(Problem.error(word, "command.not-in", new Problem.Word(word), id, file.toString())));
    }
}
