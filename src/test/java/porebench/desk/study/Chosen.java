package porebench.desk.study;

import java.util.Optional;
import porebench.evidence.study.TrialLayer;
import porebench.record.KeptStudy.Layout;

/** Chooses on the page of studies as a person does. */
final class Chosen {
    private Chosen() {}

    static void choose(StudyModel model, Layout kind) {
        model.type(StudyModel.KIND, kind.name());
    }

    static void takeFromBook(StudyModel model, boolean fromBook) {
        model.type(StudyModel.DATA, fromBook ? "book" : "file");
    }

    static void chooseLayer(StudyModel model, int place, Optional<TrialLayer> layer) {
        model.type(StudyModel.LAYERS.get(place), layer.map(TrialLayer::name).orElse("none"));
    }

    static void cross(StudyModel model, boolean oneAnother) {
        model.tick(StudyModel.CROSSED, oneAnother);
    }

    static void keepInteraction(StudyModel model, boolean apart) {
        model.tick(StudyModel.INTERACTION, apart);
    }
}
