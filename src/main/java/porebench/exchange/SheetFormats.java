package porebench.exchange;

import java.util.List;
import porebench.exchange.calibration.MeterCalibrationFormat;
import porebench.exchange.sheet.CardFormats;
import porebench.exchange.sheet.FactorIssueFormat;
import porebench.exchange.sheet.Format;
import porebench.exchange.sheet.MixDesignFormat;
import porebench.exchange.sheet.PlanFormat;
import porebench.exchange.sheet.ProfileFormat;
import porebench.exchange.sheet.RowFormat;
import porebench.exchange.sheet.StudyFormat;
import porebench.record.ChangeDecision;
import porebench.record.Determination;
import porebench.record.Equipment;
import porebench.record.FactorGroup;
import porebench.record.FactorProposal;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.Production;
import porebench.record.SheetPhoto;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.Trial;
import porebench.record.column.Columns;
import porebench.record.column.DecisionColumns;
import porebench.record.column.DeterminationColumns;
import porebench.record.column.EquipmentColumns;
import porebench.record.column.GroupColumns;
import porebench.record.column.LaboratoryColumns;
import porebench.record.column.MeasurementColumns;
import porebench.record.column.MeterColumns;
import porebench.record.column.PhotoColumns;
import porebench.record.column.ProductionColumns;
import porebench.record.column.ProposalColumns;
import porebench.record.column.SourceColumns;
import porebench.record.column.TrialColumns;

/** The formats of the files, one for each kind of record. */
final class SheetFormats {
    static final MixDesignFormat MIX_DESIGNS = new MixDesignFormat();
    static final MeterCalibrationFormat CALIBRATIONS = new MeterCalibrationFormat();
    static final Format<Source> SOURCES = rows(Source.class, "sources.csv", SourceColumns.ALL, "source_id");
    static final Format<Equipment> EQUIPMENT =
            rows(Equipment.class, "equipment.csv", EquipmentColumns.ALL, "equipment_id");
    static final Format<Trial> TRIALS = rows(Trial.class, "trial-sheet.csv", TrialColumns.ALL, "trial_id");

    /** All formats, in the order in which their records may refer to another. */
    static final List<Format<? extends Kept>> ALL = List.of(
            rows(Laboratory.class, "laboratory.csv", LaboratoryColumns.ALL),
            new ProfileFormat(),
            SOURCES,
            EQUIPMENT,
            rows(Meter.class, "meters.csv", MeterColumns.ALL, "meter_id"),
            CALIBRATIONS,
            MIX_DESIGNS,
            rows(Determination.class, "determinations.csv", DeterminationColumns.ALL, "determination_id"),
            TRIALS,
            new FactorIssueFormat(),
            CardFormats.PRINTS,
            new StudyFormat(),
            rows(SheetPhoto.class, "sheet-photos.csv", PhotoColumns.ALL, "photo_id"),
            rows(SourceMeasurement.class, "source-measurements.csv", MeasurementColumns.ALL, "measurement_id"),
            rows(Production.class, "production.csv", ProductionColumns.ALL, "production_id"),
            rows(FactorGroup.class, "factor-groups.csv", GroupColumns.ALL, "group_id"),
            new PlanFormat(),
            rows(FactorProposal.class, "factor-proposals.csv", ProposalColumns.ALL, "mix_id", "proposal_no"),
            rows(ChangeDecision.class, "change-decisions.csv", DecisionColumns.ALL, "decision_id"),
            CardFormats.STEPS,
            FieldSheets.READINGS);

    private SheetFormats() {}

    private static <T extends Kept> Format<T> rows(Class<T> kind, String file, Columns<T> columns, String... key) {
        return new RowFormat<>(kind, file, columns, List.of(key));
    }
}
