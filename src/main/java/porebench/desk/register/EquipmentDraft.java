package porebench.desk.register;

import porebench.record.EquipmentKind;

/** A piece of equipment as typed into the form. */
record EquipmentDraft(
        String id,
        EquipmentKind type,
        String description,
        String division,
        String limit,
        String calibratedOn,
        String dueOn,
        String certificate,
        String usedFrom,
        String usedUntil,
        String remarks) {
    /** Returns whether anything is typed of a calibration, which is then asked for whole. */
    boolean hasCalibration() {
        return !(limit.isBlank() && calibratedOn.isBlank() && dueOn.isBlank() && certificate.isBlank());
    }

    EquipmentDraft withId(String typed) {
        return new EquipmentDraft(
                typed,
                type,
                description,
                division,
                limit,
                calibratedOn,
                dueOn,
                certificate,
                usedFrom,
                usedUntil,
                remarks);
    }

    EquipmentDraft withType(EquipmentKind chosen) {
        return new EquipmentDraft(
                id,
                chosen,
                description,
                division,
                limit,
                calibratedOn,
                dueOn,
                certificate,
                usedFrom,
                usedUntil,
                remarks);
    }

    EquipmentDraft withDescription(String typed) {
        return new EquipmentDraft(
                id, type, typed, division, limit, calibratedOn, dueOn, certificate, usedFrom, usedUntil, remarks);
    }

    EquipmentDraft withDivision(String typed) {
        return new EquipmentDraft(
                id, type, description, typed, limit, calibratedOn, dueOn, certificate, usedFrom, usedUntil, remarks);
    }

    EquipmentDraft withLimit(String typed) {
        return new EquipmentDraft(
                id, type, description, division, typed, calibratedOn, dueOn, certificate, usedFrom, usedUntil, remarks);
    }

    EquipmentDraft withCalibratedOn(String typed) {
        return new EquipmentDraft(
                id, type, description, division, limit, typed, dueOn, certificate, usedFrom, usedUntil, remarks);
    }

    EquipmentDraft withDueOn(String typed) {
        return new EquipmentDraft(
                id, type, description, division, limit, calibratedOn, typed, certificate, usedFrom, usedUntil, remarks);
    }

    EquipmentDraft withCertificate(String typed) {
        return new EquipmentDraft(
                id, type, description, division, limit, calibratedOn, dueOn, typed, usedFrom, usedUntil, remarks);
    }

    EquipmentDraft withUsedFrom(String typed) {
        return new EquipmentDraft(
                id, type, description, division, limit, calibratedOn, dueOn, certificate, typed, usedUntil, remarks);
    }

    EquipmentDraft withUsedUntil(String typed) {
        return new EquipmentDraft(
                id, type, description, division, limit, calibratedOn, dueOn, certificate, usedFrom, typed, remarks);
    }

    EquipmentDraft withRemarks(String typed) {
        return new EquipmentDraft(
                id, type, description, division, limit, calibratedOn, dueOn, certificate, usedFrom, usedUntil, typed);
    }
}
