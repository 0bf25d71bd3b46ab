package porebench.record;

/** Something a laboratory keeps in its lab book; a correction is a new version of it, and the first one stays. */
public sealed interface Kept
        permits Laboratory,
                LaboratoryProfile,
                Source,
                Equipment,
                Meter,
                MeterCalibration,
                MixDesign,
                Determination,
                Trial,
                FactorIssue,
                CardPrint,
                CardStep,
                KeptStudy,
                SheetPhoto,
                SourceMeasurement,
                Production,
                FactorGroup,
                TestPlan,
                FactorProposal,
                ChangeDecision,
                FieldReading {
    /** Returns what kind of record this is. */
    RecordKind kind();

    /** Returns the name of the record, unique within its kind. */
    String recordId();
}
