package porebench.desk.frame.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.evidence.practice.PracticeRun;
import porebench.exchange.PracticeLaboratory;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.simulate.Fault;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Trials are simulated in a training book, and what was planted in them is told afterwards. */
class PracticeModelTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 15, 20);
    private static final MixId MIX = new MixId("HG-101");

    private final MemoryLabBook book =
            new MemoryLabBook(Clock.fixed(Instant.parse("2026-11-25T15:20:00Z"), ZoneOffset.UTC));
    private final PracticeModel model = new PracticeModel(book, NOW);

    @BeforeEach
    void begin() {
        new PracticeLaboratory().fill(book, LocalDate.of(2026, 11, 25));
    }

    private static PracticeModel.Wish wish(MixId mix, String meter, Optional<Fault> fault, int faulty) {
        return new PracticeModel.Wish(mix, new MeterId(meter), 6, fault, faulty, "R. Vale", seed -> "run " + seed);
    }

    private void simulate(Optional<Fault> fault, int faulty) {
        Answer<List<Draft>> drafts = model.simulated(wish(MIX, "B-1", fault, faulty));
        assertThat(drafts.problems()).isEmpty();
        assertThat(PracticeModel.firstTrial(drafts.value().orElseThrow())).isPresent();
        assertThat(book.keep(drafts.value().orElseThrow(), "R. Vale", "practice"))
                .isEmpty();
    }

    @Test
    void whatWasPlantedIsToldOfEveryRunAndNoneStandsForAnother() {
        assertThat(model.planted(MIX)).isEmpty();
        simulate(Optional.of(Fault.FOAM), 2);
        simulate(Optional.empty(), 0);
        List<PracticeModel.Told> told = model.planted(MIX);
        assertThat(told).hasSize(2).allSatisfy(run -> assertThat(run.trials()).hasSize(6));
        assertThat(told)
                .extracting(run -> run.run().orElseThrow().fault())
                .containsExactlyInAnyOrder(Optional.of(Fault.FOAM), Optional.empty());
        assertThat(told).extracting(run -> run.run().orElseThrow().faulty()).containsExactlyInAnyOrder(2, 0);
        assertThat(told.get(0).seed()).isNotEqualTo(told.get(1).seed());
        assertThat(model.planted(new MixId("HG-102"))).isEmpty();
    }

    @Test
    void aLaterRunIsToldFirst() {
        simulate(Optional.of(Fault.SOAK), 1);
        PracticeModel later = new PracticeModel(book, NOW.plusDays(1));
        Answer<List<Draft>> drafts = later.simulated(wish(MIX, "A-1", Optional.of(Fault.LINE), 3));
        assertThat(book.keep(drafts.value().orElseThrow(), "R. Vale", "practice"))
                .isEmpty();
        assertThat(later.planted(MIX))
                .extracting(run -> run.run().orElseThrow().fault().orElseThrow())
                .containsExactly(Fault.LINE, Fault.SOAK);
    }

    @Test
    void chanceMayDrawAnything() {
        simulate(Optional.empty(), PracticeModel.BY_LOT);
        PracticeRun run = model.planted(MIX).get(0).run().orElseThrow();
        // The lot is what the moment leaves in its last 16 bits: 2026-11-25 15:20:00 is second 1795620000, that is
        // 27398 x 65536
        // and 64672 over.
        assertThat(run.lot()).isEqualTo(64672);
        assertThat(run).isEqualTo(PracticeRun.byLot(64672, 6));
    }

    @Test
    void aMixOrMeterThatIsNotThereIsNamed() {
        assertThat(model.simulated(wish(new MixId("HG-999"), "B-1", Optional.empty(), 0))
                        .problems())
                .containsExactly(Problem.error("mix", "book.not-there", RecordKind.MIX.word(), "HG-999"));
        assertThat(model.simulated(wish(MIX, "B-9", Optional.empty(), 0)).problems())
                .containsExactly(Problem.error("meter", "book.not-there", RecordKind.METER.word(), "B-9"));
    }

    @Test
    void theMetersOfferedAreThoseInServiceTheSoundOnesFirst() {
        assertThat(model.meters())
                .extracting(meter -> meter.id().text(), PracticeModel.PracticeMeter::isSound)
                .containsExactlyInAnyOrder(tuple("A-1", true), tuple("B-1", true));
        assertThat(new PracticeModel(book, NOW.plusYears(3)).meters())
                .extracting(PracticeModel.PracticeMeter::isSound)
                .containsOnly(false);
    }

    @Test
    void aMeterOutOfServiceIsNotOfferedAndOneThatNobodyCalibratedComesLast() {
        Books.keep(book, meter("A-0", true), meter("A-00", false));
        assertThat(model.meters())
                .extracting(meter -> meter.id().text(), PracticeModel.PracticeMeter::isSound)
                .containsExactly(tuple("A-1", true), tuple("B-1", true), tuple("A-0", false));
    }

    private static Meter meter(String id, boolean inService) {
        return new Meter(
                new MeterId(id),
                MeterType.B,
                "",
                Typed.of("7.050", VolumeUnit.LITRE),
                new BigDecimal("0.10"),
                new BigDecimal("10"),
                inService,
                "");
    }

    /** The lot of the moment is 64672, as above. */
    @Test
    void runsOfTheSameMomentAndWishGetLotsOneAfterTheOther() {
        simulate(Optional.of(Fault.FOAM), 2);
        simulate(Optional.of(Fault.FOAM), 2);
        simulate(Optional.of(Fault.FOAM), 2);
        assertThat(model.planted(MIX))
                .extracting(run -> run.run().orElseThrow().lot())
                .containsExactlyInAnyOrder(64672, 64673, 64674);
    }
}
