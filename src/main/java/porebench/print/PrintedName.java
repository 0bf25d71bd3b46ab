package porebench.print;

import porebench.evidence.paper.CalibrationForm;
import porebench.evidence.paper.CalibrationRecord;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldList;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.paper.Printed;
import porebench.evidence.paper.RecallList;
import porebench.evidence.paper.RegisterList;
import porebench.evidence.paper.SampleLabels;
import porebench.evidence.paper.TrialSheet;
import porebench.print.page.Words;

/** What a printed paper is called, in a sentence and as the title of its document. */
final class PrintedName {
    private PrintedName() {}

    static String of(Printed what, Words words) {
        if (what instanceof FactorCard card) {
            return words.say("what.card", card.mixId().text());
        }
        if (what instanceof PlantCard plant) {
            return words.say("what.plant-card", plant.plant());
        }
        if (what instanceof CalibrationRecord record) {
            return words.say("what.calibration", record.meter().id().text());
        }
        if (what instanceof CalibrationForm form) {
            return words.say(
                    "what.form",
                    form.meter()
                            .map(meter -> meter.id().text())
                            .orElseGet(() -> words.say("meter." + form.meterType())));
        }
        if (what instanceof RegisterList list) {
            return words.say("what.register", words.date(list.moment().toLocalDate()));
        }
        if (what instanceof FieldList list) {
            return words.say(
                    "what.readings",
                    words.date(list.days().first()),
                    words.date(list.days().last()));
        }
        if (what instanceof FieldSheet sheet) {
            return words.say("what.field-sheet", sheet.card().mixId().text());
        }
        if (what instanceof RecallList recall) {
            return words.say("what.recall", words.date(recall.moment().toLocalDate()));
        }
        if (what instanceof PlanSheet sheet) {
            return words.say("what.plan", words.date(sheet.plan().from()));
        }
        if (what instanceof SampleLabels labels) {
            return words.say("what.labels", labels.sheet().mix().id().text());
        }
        return words.say("what.sheet", ((TrialSheet) what).mix().id().text());
    }
}
