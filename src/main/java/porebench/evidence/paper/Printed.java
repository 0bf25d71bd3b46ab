package porebench.evidence.paper;

import java.util.Optional;
import porebench.record.Laboratory;

/** Something that is put on paper; what it says is settled here, how it looks is the business of {@code print}. */
public sealed interface Printed
        permits FactorCard,
                PlantCard,
                TrialSheet,
                CalibrationRecord,
                CalibrationForm,
                RegisterList,
                PlanSheet,
                FieldSheet,
                FieldList,
                RecallList,
                SampleLabels {
    /** Returns whose it is; empty when the lab book does not say. */
    Optional<Laboratory> laboratory();

    /** Returns whether it comes from a training book: nothing on it was measured, and it says so. */
    default boolean isTraining() {
        return laboratory().filter(Laboratory::training).isPresent();
    }
}
