package porebench.record.book;

import java.util.function.Function;
import java.util.stream.Stream;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.ChangeDecision;
import porebench.record.Determination;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.SourceMeasurement;
import porebench.record.Trial;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * That records of one kind belong to a record of another, as trials do to a mix: what a lab book can be asked for without reading
 * the rest.
 *
 * @param kind the class of the records
 * @param to the kind of what they belong to; the lab book's column that names it is called after it
 * @param owners what a record belongs to, by name
 * @param <T> the records
 */
public record Belonging<T extends Kept>(Class<T> kind, RecordKind to, Function<T, Stream<String>> owners) {
    public static final Belonging<Determination> DETERMINATIONS_OF_MIX = one(
            Determination.class,
            RecordKind.MIX,
            determination -> determination.mixId().text());
    public static final Belonging<Trial> TRIALS_OF_MIX =
            one(Trial.class, RecordKind.MIX, trial -> trial.mixId().text());
    public static final Belonging<Trial> TRIALS_OF_DETERMINATION = one(
            Trial.class,
            RecordKind.DETERMINATION,
            trial -> trial.determinationId().text());
    public static final Belonging<Trial> TRIALS_ON_METER =
            one(Trial.class, RecordKind.METER, trial -> trial.meterId().text());
    public static final Belonging<FactorIssue> ISSUES_OF_MIX =
            one(FactorIssue.class, RecordKind.MIX, issue -> issue.mixId().text());
    public static final Belonging<CardPrint> PRINTS_OF_MIX =
            one(CardPrint.class, RecordKind.MIX, print -> print.mixId().text());
    public static final Belonging<MeterCalibration> CALIBRATIONS_OF_METER = one(
            MeterCalibration.class,
            RecordKind.METER,
            calibration -> calibration.meterId().text());
    public static final Belonging<MixDesign> MIXES_OF_SOURCE = new Belonging<>(
            MixDesign.class, RecordKind.SOURCE, mix -> mix.sources().stream().map(SourceId::text));

    /** Those made with a source, of mixes that use it now and of mixes that no longer do. */
    public static final Belonging<Determination> DETERMINATIONS_OF_SOURCE = new Belonging<>(
            Determination.class,
            RecordKind.SOURCE,
            determination -> determination.sourceVersions().keySet().stream().map(SourceId::text));

    public static final Belonging<SheetPhoto> PHOTOS_OF_TRIAL =
            one(SheetPhoto.class, RecordKind.TRIAL, photo -> photo.trialId().text());

    public static final Belonging<SourceMeasurement> MEASUREMENTS_OF_SOURCE = one(
            SourceMeasurement.class,
            RecordKind.SOURCE,
            measurement -> measurement.sourceId().text());

    public static final Belonging<Production> PRODUCTION_OF_MIX =
            one(Production.class, RecordKind.MIX, spell -> spell.mixId().text());
    public static final Belonging<FactorGroup> GROUPS_OF_MIX = new Belonging<>(
            FactorGroup.class, RecordKind.MIX, group -> group.members().stream().map(MixId::text));

    public static final Belonging<FactorProposal> PROPOSALS_OF_MIX = one(
            FactorProposal.class, RecordKind.MIX, proposal -> proposal.mixId().text());

    public static final Belonging<ChangeDecision> DECISIONS_OF_MIX = one(
            ChangeDecision.class, RecordKind.MIX, decision -> decision.mixId().text());

    public static final Belonging<CardStep> CARD_STEPS_OF_MIX =
            one(CardStep.class, RecordKind.MIX, step -> step.mixId().text());

    public static final Belonging<FieldReading> READINGS_OF_MIX =
            one(FieldReading.class, RecordKind.MIX, reading -> reading.mixId().text());

    private static <T extends Kept> Belonging<T> one(Class<T> kind, RecordKind to, Function<T, String> owner) {
        return new Belonging<>(kind, to, record -> Stream.of(owner.apply(record)));
    }

    /** Returns whether a record belongs to the one of a name. */
    public boolean holds(T record, String ownerId) {
        return owners.apply(record).anyMatch(ownerId::equals);
    }

    /** Returns the name of the lab book's column in which the owner stands. */
    public String column() {
        return to.symbol() + "_id";
    }
}
