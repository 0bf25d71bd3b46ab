package porebench.desk.study;

import porebench.desk.form.Days;
import porebench.record.KeptStudy;

/** What is typed to keep a study. */
record KeepDraft(String id, String title, String madeOn, String by, String remarks) {
    /** Returns the draft of a study that is not kept yet. */
    static KeepDraft blank(String person) {
        return new KeepDraft("", "", "", person, "");
    }

    /** Returns the draft of a correction. */
    static KeepDraft of(KeptStudy study) {
        return new KeepDraft(study.recordId(), study.title(), Days.show(study.madeOn()), study.by(), study.remarks());
    }

    KeepDraft withId(String typed) {
        return new KeepDraft(typed, title, madeOn, by, remarks);
    }

    KeepDraft withTitle(String typed) {
        return new KeepDraft(id, typed, madeOn, by, remarks);
    }

    KeepDraft withMadeOn(String typed) {
        return new KeepDraft(id, title, typed, by, remarks);
    }

    KeepDraft withBy(String typed) {
        return new KeepDraft(id, title, madeOn, typed, remarks);
    }

    KeepDraft withRemarks(String typed) {
        return new KeepDraft(id, title, madeOn, by, typed);
    }
}
