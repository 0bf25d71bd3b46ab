package porebench.record;

import porebench.method.Problem;

/** The kinds of record a lab book keeps, in the order in which one may refer to another. */
public enum RecordKind {
    LABORATORY("laboratory", Laboratory.class),
    PROFILE("profile", LaboratoryProfile.class),
    SOURCE("source", Source.class),
    EQUIPMENT("equipment", Equipment.class),
    METER("meter", Meter.class),
    METER_CALIBRATION("meter_calibration", MeterCalibration.class),
    MIX("mix", MixDesign.class),
    DETERMINATION("determination", Determination.class),
    TRIAL("trial", Trial.class),
    FACTOR_ISSUE("factor_issue", FactorIssue.class),
    CARD_PRINT("card_print", CardPrint.class),
    STUDY("study", KeptStudy.class),
    SHEET_PHOTO("sheet_photo", SheetPhoto.class),
    SOURCE_MEASUREMENT("source_measurement", SourceMeasurement.class),
    PRODUCTION("production", Production.class),
    FACTOR_GROUP("factor_group", FactorGroup.class),
    TEST_PLAN("test_plan", TestPlan.class),
    FACTOR_PROPOSAL("factor_proposal", FactorProposal.class),
    CHANGE_DECISION("change_decision", ChangeDecision.class),
    CARD_STEP("card_step", CardStep.class),
    FIELD_READING("field_reading", FieldReading.class);

    private final String symbol;
    private final Class<? extends Kept> type;

    RecordKind(String symbol, Class<? extends Kept> type) {
        this.symbol = symbol;
        this.type = type;
    }

    /** Returns the word by which the lab book knows the kind. */
    public String symbol() {
        return symbol;
    }

    /** Returns the kind as a word inside a problem's message. */
    public Problem.Word word() {
        return new Problem.Word(symbol);
    }

    /** Returns the class of the records of this kind. */
    public Class<? extends Kept> type() {
        return type;
    }
}
