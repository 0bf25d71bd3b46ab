package porebench.desk.register;

import porebench.method.MeterType;
import porebench.quantity.VolumeUnit;

/** A meter as typed into the form. */
record MeterDraft(
        String id,
        MeterType type,
        String serial,
        String bowl,
        VolumeUnit bowlUnit,
        String division,
        String scaleTop,
        boolean inService,
        String remarks) {

    MeterDraft withId(String typed) {
        return new MeterDraft(typed, type, serial, bowl, bowlUnit, division, scaleTop, inService, remarks);
    }

    MeterDraft withType(MeterType chosen) {
        return new MeterDraft(id, chosen, serial, bowl, bowlUnit, division, scaleTop, inService, remarks);
    }

    MeterDraft withSerial(String typed) {
        return new MeterDraft(id, type, typed, bowl, bowlUnit, division, scaleTop, inService, remarks);
    }

    MeterDraft withBowl(String typed) {
        return new MeterDraft(id, type, serial, typed, bowlUnit, division, scaleTop, inService, remarks);
    }

    MeterDraft withBowlUnit(VolumeUnit chosen) {
        return new MeterDraft(id, type, serial, bowl, chosen, division, scaleTop, inService, remarks);
    }

    MeterDraft withDivision(String typed) {
        return new MeterDraft(id, type, serial, bowl, bowlUnit, typed, scaleTop, inService, remarks);
    }

    MeterDraft withScaleTop(String typed) {
        return new MeterDraft(id, type, serial, bowl, bowlUnit, division, typed, inService, remarks);
    }

    MeterDraft withInService(boolean chosen) {
        return new MeterDraft(id, type, serial, bowl, bowlUnit, division, scaleTop, chosen, remarks);
    }

    MeterDraft withRemarks(String typed) {
        return new MeterDraft(id, type, serial, bowl, bowlUnit, division, scaleTop, inService, typed);
    }
}
