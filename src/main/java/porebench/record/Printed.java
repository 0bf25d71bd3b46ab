package porebench.record;

/** Something that is put on paper; what it says is settled here, how it looks is the business of {@code print}. */
public sealed interface Printed permits FactorCard, TrialSheet, CalibrationRecord, CalibrationForm {}
