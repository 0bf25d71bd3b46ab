package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.Bench;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.record.CardPrint;
import porebench.record.Determination;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.KeptStudy;
import porebench.record.Laboratory;
import porebench.record.LaboratoryProfile;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SampleStudies;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.TakenDoubt;
import porebench.record.Trial;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.EquipmentId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.StudyId;
import porebench.store.Books;

/** Every text of every kind of record has its length, and holds nothing that turns the writing round. */
class WordingTextsTest {
    private static final int NAME = 60;
    private static final int LONG_NAME = 100;
    private static final int LINE = 200;
    private static final int NOTE = 4000;
    private static final int PLACE = 5000;

    /** One text of a record: its field, how long it may be, and the record that has it and plain texts elsewhere. */
    private static Arguments text(RecordKind kind, String field, int longest, Function<String, Kept> of) {
        return Arguments.of(kind, field, longest, of);
    }

    static Stream<Arguments> texts() {
        return Stream.of(
                        ofTheLaboratory(),
                        ofSources(),
                        ofMeters(),
                        ofMixes(),
                        ofTrials(),
                        ofIssues(),
                        ofDoubtsTakenOn(),
                        ofStudies())
                .flatMap(all -> all);
    }

    private static Stream<Arguments> ofTheLaboratory() {
        return Stream.of(
                text(RecordKind.LABORATORY, "name", LINE, text -> new Laboratory(text, "")),
                text(RecordKind.LABORATORY, "address", NOTE, text -> new Laboratory("L", text)),
                text(RecordKind.PROFILE, "id", NAME, text -> profile(text, "Own")),
                text(RecordKind.PROFILE, "title", LINE, text -> profile("own", text)));
    }

    private static Stream<Arguments> ofSources() {
        return Stream.of(
                text(RecordKind.SOURCE, "id", NAME, text -> source(text, "", "", "", "")),
                text(RecordKind.SOURCE, "name", LINE, text -> source("S", text, "", "", "")),
                text(RecordKind.SOURCE, "place", LINE, text -> source("S", "", text, "", "")),
                text(RecordKind.SOURCE, "ledge", LINE, text -> source("S", "", "", text, "")),
                text(RecordKind.SOURCE, "remarks", NOTE, text -> source("S", "", "", "", text)));
    }

    private static Stream<Arguments> ofMeters() {
        return Stream.of(
                text(RecordKind.EQUIPMENT, "id", NAME, text -> equipment(text, "", "", "")),
                text(RecordKind.EQUIPMENT, "description", LINE, text -> equipment("E", text, "", "")),
                text(RecordKind.EQUIPMENT, "certificate", LINE, text -> equipment("E", "", text, "")),
                text(RecordKind.EQUIPMENT, "remarks", NOTE, text -> equipment("E", "", "", text)),
                text(RecordKind.METER, "id", NAME, text -> meter(text, "", "")),
                text(RecordKind.METER, "serial", LINE, text -> meter("B-1", text, "")),
                text(RecordKind.METER, "remarks", NOTE, text -> meter("B-1", "", text)),
                text(RecordKind.METER_CALIBRATION, "id", LONG_NAME, text -> calibration(text, "B-1", "", "")),
                text(RecordKind.METER_CALIBRATION, "meter", NAME, text -> calibration("C", text, "", "")),
                text(RecordKind.METER_CALIBRATION, "by", LINE, text -> calibration("C", "B-1", text, "")),
                text(RecordKind.METER_CALIBRATION, "remarks", NOTE, text -> calibration("C", "B-1", "", text)));
    }

    private static Stream<Arguments> ofMixes() {
        return Stream.of(
                text(RecordKind.MIX, "id", NAME, text -> mix(text, "", "")),
                text(RecordKind.MIX, "title", LINE, text -> mix("M", text, "")),
                text(RecordKind.MIX, "remarks", NOTE, text -> mix("M", "", text)),
                text(RecordKind.MIX, "constituents.0.name", LINE, text -> mixOf(text, "S-1", "Stone", "S-2")),
                text(RecordKind.MIX, "constituents.0.source", NAME, text -> mixOf("Sand", text, "Stone", "S-2")),
                text(RecordKind.MIX, "constituents.1.name", LINE, text -> mixOf("Sand", "S-1", text, "S-2")),
                text(RecordKind.MIX, "constituents.1.source", NAME, text -> mixOf("Sand", "S-1", "Stone", text)));
    }

    private static Stream<Arguments> ofTrials() {
        return Stream.of(
                text(RecordKind.DETERMINATION, "id", LONG_NAME, text -> Samples.determination(text, "M-1")),
                text(RecordKind.DETERMINATION, "purpose", NOTE, text -> determination("M-1/1", text)),
                text(RecordKind.TRIAL, "trialId", LONG_NAME, text -> trial(text, "B-1", "R. Vale", "", "", "")),
                text(RecordKind.TRIAL, "meter", NAME, text -> trial("T", text, "R. Vale", "", "", "")),
                text(RecordKind.TRIAL, "operator", LINE, text -> trial("T", "B-1", text, "", "", "")),
                text(RecordKind.TRIAL, "remarks", NOTE, text -> trial("T", "B-1", "R. Vale", text, "", "")),
                text(RecordKind.TRIAL, "keptBecause", NOTE, text -> trial("T", "B-1", "R. Vale", "", text, "")),
                text(RecordKind.TRIAL, "struckBecause", NOTE, text -> trial("T", "B-1", "R. Vale", "", "", text)));
    }

    private static Stream<Arguments> ofIssues() {
        return Stream.of(
                text(RecordKind.FACTOR_ISSUE, "issuedBy", LINE, text -> issue(text, "", "", "", "", Grounds.NONE)),
                text(RecordKind.FACTOR_ISSUE, "approvedBy", LINE, text -> issue("I", text, "", "", "", Grounds.NONE)),
                text(RecordKind.FACTOR_ISSUE, "reason", NOTE, text -> issue("I", "", text, "", "", Grounds.NONE)),
                text(RecordKind.FACTOR_ISSUE, "overrideBy", LINE, text -> issue("I", "", "", text, "", Grounds.NONE)),
                text(
                        RecordKind.FACTOR_ISSUE,
                        "overrideReason",
                        NOTE,
                        text -> issue("I", "", "", "", text, Grounds.NONE)),
                text(
                        RecordKind.CARD_PRINT,
                        "paper",
                        LINE,
                        text -> new CardPrint(new MixId("M-1"), 1, 1, text, "printer")),
                text(
                        RecordKind.CARD_PRINT,
                        "destination",
                        PLACE,
                        text -> new CardPrint(new MixId("M-1"), 1, 1, "A6", text)));
    }

    private static Stream<Arguments> ofStudies() {
        return Stream.of(
                text(RecordKind.STUDY, "id", NAME, text -> study(text, "", "R. Vale", "", "day", "d1", "")),
                text(RecordKind.STUDY, "title", LINE, text -> study("L", text, "R. Vale", "", "day", "d1", "")),
                text(RecordKind.STUDY, "by", LINE, text -> study("L", "", text, "", "day", "d1", "")),
                text(RecordKind.STUDY, "fileName", LINE, text -> study("L", "", "R. Vale", text, "day", "d1", "")),
                text(RecordKind.STUDY, "layers", LINE, text -> study("L", "", "R. Vale", "", text, "d1", "")),
                text(RecordKind.STUDY, "readings", LINE, text -> study("L", "", "R. Vale", "", "day", text, "")),
                text(RecordKind.STUDY, "remarks", NOTE, text -> study("L", "", "R. Vale", "", "day", "d1", text)));
    }

    private static Kept study(
            String id, String title, String by, String file, String layer, String name, String remarks) {
        KeptStudy.Reading reading = new KeptStudy.Reading(List.of(name), Samples.number("5.4"));
        return new KeptStudy(
                new StudyId(id),
                KeptStudy.Layout.LAYERS,
                title,
                SampleStudies.DAY,
                by,
                file,
                List.of(layer),
                List.of(reading, reading),
                remarks);
    }

    private static Stream<Arguments> ofDoubtsTakenOn() {
        return Stream.of(
                text(
                        RecordKind.FACTOR_ISSUE,
                        "overrideBy",
                        LINE,
                        text -> issue("I", "", "", "", "", takenOn(text, "looked"))),
                text(
                        RecordKind.FACTOR_ISSUE,
                        "overrideReason",
                        NOTE,
                        text -> issue("I", "", "", "", "", takenOn("M. Ash", text))));
    }

    private static Kept profile(String id, String title) {
        return new LaboratoryProfile(Profiles.standard().copyAs(id, title));
    }

    private static Source source(String id, String name, String place, String ledge, String remarks) {
        return new Source(new SourceId(id), name, Role.FINE, place, ledge, Optional.empty(), Optional.empty(), remarks);
    }

    private static Kept equipment(String id, String description, String certificate, String remarks) {
        LocalDate day = LocalDate.of(2026, 3, 1);
        return new Equipment(
                new EquipmentId(id),
                EquipmentKind.BALANCE,
                description,
                Samples.number("0.1"),
                Optional.of(new Equipment.Calibration(day, Samples.number("0.2"), day.plusYears(1), certificate)),
                day,
                Optional.empty(),
                remarks);
    }

    private static Kept meter(String id, String serial, String remarks) {
        Meter plain = Samples.meter(id, MeterType.B);
        return new Meter(
                plain.id(),
                plain.type(),
                serial,
                plain.bowl(),
                plain.divisionPercent(),
                plain.scaleTopPercent(),
                plain.inService(),
                remarks);
    }

    private static Kept calibration(String id, String meter, String by, String remarks) {
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId(meter),
                MeterType.B,
                Bench.START,
                by,
                MeterCalibration.Reason.DOUBT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                remarks);
    }

    private static Kept mix(String id, String title, String remarks) {
        MixDesign plain = Samples.mix(id, "S-1", "S-2");
        return new MixDesign(
                plain.id(),
                title,
                plain.batch(),
                plain.soakMinutes(),
                plain.airTolerancePercent(),
                plain.profileId(),
                remarks,
                Optional.empty());
    }

    private static Kept mixOf(String sand, String sandFrom, String stone, String stoneFrom) {
        return Samples.mix(
                "M-1",
                Samples.constituent(sand, Role.FINE, sandFrom, "700"),
                Samples.constituent(stone, Role.COARSE, stoneFrom, "1050"));
    }

    private static Determination determination(String id, String purpose) {
        return new Determination(new DeterminationId(id), Bench.MIX, 1, Map.of(), Bench.START, purpose);
    }

    private static Kept trial(String id, String meter, String operator, String remarks, String kept, String struck) {
        Trial plain = Samples.trial(id, "M-1", "M-1/1", "5.4");
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt(),
                operator,
                new MeterId(meter),
                plain.readings(),
                remarks,
                Optional.of(kept),
                Optional.of(struck),
                Optional.empty(),
                false);
    }

    private static Kept issue(
            String by, String approvedBy, String reason, String overrideBy, String overrideReason, Grounds grounds) {
        FactorIssue plain = Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9));
        return new FactorIssue(
                plain.mixId(),
                plain.revision(),
                plain.action(),
                plain.factorPercent(),
                plain.determinationId(),
                plain.meterType(),
                plain.inForceFrom(),
                plain.recheckBy(),
                by,
                approvedBy,
                reason,
                plain.mixVersion(),
                plain.sourceVersions(),
                plain.profileId(),
                overrideBy,
                overrideReason,
                grounds);
    }

    private static Grounds takenOn(String who, String reason) {
        return new Grounds(
                Map.of(),
                Map.of(),
                List.of(new TakenDoubt(Optional.empty(), "trial.leak", "it leaked", who, reason)),
                FactorOrigin.HERE,
                false);
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @MethodSource("texts")
    void aTextIsAsLongAsItMayBeAndNotLonger(RecordKind kind, String field, int longest, Function<String, Kept> of) {
        // A stone is one character to a person and two in Java.
        String stone = "\uD83E\uDEA8";
        assertThat(of.apply("t").kind()).isEqualTo(kind);
        assertThat(Wording.check(of.apply("t"))).isEmpty();
        assertThat(Wording.check(of.apply(stone.repeat(longest)))).isEmpty();
        assertThat(Wording.check(of.apply(stone.repeat(longest + 1))))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo("text.too-long");
                    assertThat(problem.field()).isEqualTo(field);
                    assertThat(problem.values()).endsWith(longest + 1, longest);
                });
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @MethodSource("texts")
    void aTextThatTurnsTheWritingRoundIsNamedByItsField(
            RecordKind kind, String field, int longest, Function<String, Kept> of) {
        assertThat(Wording.check(of.apply("t\u202E"))).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("text.unseen");
            assertThat(problem.field()).isEqualTo(field);
            assertThat(problem.values().get(0)).isEqualTo(kind.word());
            assertThat(problem.values()).endsWith("U+202E", 2);
        });
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @MethodSource("texts")
    void onlyNotesHaveLines(RecordKind kind, String field, int longest, Function<String, Kept> of) {
        List<Problem> said = Wording.check(of.apply("two\nlines"));
        assertThat(Books.codes(said))
                .as("%s %s", kind, field)
                .isEqualTo(longest == NOTE ? List.of() : List.of("text.unseen"));
    }

    @Test
    void aMessageQuotesANameOf100CharactersInFullAndTheBeginningOfALongerOne() {
        String longest = "n".repeat(LONG_NAME);
        assertThat(Wording.check(determination(longest, "\u202E")))
                .singleElement()
                .satisfies(problem -> assertThat(problem.values().get(1)).isEqualTo(longest));
        assertThat(Wording.check(determination(longest + "n", "")))
                .singleElement()
                .satisfies(problem -> assertThat(problem.values().get(1)).isEqualTo("n".repeat(NAME) + "…"));
    }

    @Test
    void aFormSaysWhatIsWrongWithTheNameOfANewRecordAndLeavesTheOldOfACorrection() {
        MemoryLabBook book = new MemoryLabBook(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
        Source before = source("S 1", "", "Pit\u202E", "", "");
        book.holdAsBefore(before);
        Namesakes names = new Namesakes(book);
        assertThat(Wording.ofForm(source("S  1", "", "", "Le\u202Edge", ""), Optional.empty(), names))
                .extracting(Problem::code)
                .containsExactlyInAnyOrder("text.unseen", "id.looks-the-same");
        assertThat(Wording.ofForm(source("S 1", "Sand", "Pit\u202E", "", ""), Optional.of(before), names))
                .isEmpty();
        assertThat(Wording.ofForm(source("S 1", "", "Pit\u202E", "Le\u202Edge", ""), Optional.of(before), names))
                .extracting(Problem::field)
                .containsExactly("ledge");
    }
}
