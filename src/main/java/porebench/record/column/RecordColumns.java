package porebench.record.column;

import java.util.EnumMap;
import java.util.Map;
import porebench.record.Kept;
import porebench.record.RecordKind;

/** The columns of every kind of record. */
public final class RecordColumns {
    private static final Map<RecordKind, Columns<? extends Kept>> ALL = new EnumMap<>(Map.ofEntries(
            Map.entry(RecordKind.LABORATORY, LaboratoryColumns.ALL),
            Map.entry(RecordKind.PROFILE, ProfileColumns.ALL),
            Map.entry(RecordKind.SOURCE, SourceColumns.ALL),
            Map.entry(RecordKind.EQUIPMENT, EquipmentColumns.ALL),
            Map.entry(RecordKind.METER, MeterColumns.ALL),
            Map.entry(RecordKind.METER_CALIBRATION, CalibrationColumns.ALL),
            Map.entry(RecordKind.MIX, MixColumns.ALL),
            Map.entry(RecordKind.DETERMINATION, DeterminationColumns.ALL),
            Map.entry(RecordKind.TRIAL, TrialColumns.ALL),
            Map.entry(RecordKind.FACTOR_ISSUE, FactorIssueColumns.ALL),
            Map.entry(RecordKind.CARD_PRINT, CardPrintColumns.ALL),
            Map.entry(RecordKind.STUDY, StudyColumns.ALL),
            Map.entry(RecordKind.SHEET_PHOTO, PhotoColumns.ALL),
            Map.entry(RecordKind.SOURCE_MEASUREMENT, MeasurementColumns.ALL),
            Map.entry(RecordKind.PRODUCTION, ProductionColumns.ALL),
            Map.entry(RecordKind.FACTOR_GROUP, GroupColumns.ALL),
            Map.entry(RecordKind.TEST_PLAN, PlanColumns.ALL),
            Map.entry(RecordKind.FACTOR_PROPOSAL, ProposalColumns.ALL),
            Map.entry(RecordKind.CHANGE_DECISION, DecisionColumns.ALL),
            Map.entry(RecordKind.CARD_STEP, CardStepColumns.ALL),
            Map.entry(RecordKind.FIELD_READING, FieldReadingColumns.ALL)));

    private RecordColumns() {}

    /** Returns the columns of a kind of record. */
    public static Columns<? extends Kept> of(RecordKind kind) {
        Columns<? extends Kept> columns = ALL.get(kind);
        if (columns == null) {
            throw new IllegalArgumentException("kind must have columns, but is " + kind);
        }
        return columns;
    }
}
