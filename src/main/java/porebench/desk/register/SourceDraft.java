package porebench.desk.register;

import porebench.method.Role;

/** A source as typed into the form. */
record SourceDraft(
        String id,
        String name,
        Role role,
        String place,
        String ledge,
        String relativeDensity,
        String absorption,
        String remarks) {
    static final SourceDraft BLANK = new SourceDraft("", "", Role.COARSE, "", "", "", "", "");

    SourceDraft withId(String typed) {
        return new SourceDraft(typed, name, role, place, ledge, relativeDensity, absorption, remarks);
    }

    SourceDraft withName(String typed) {
        return new SourceDraft(id, typed, role, place, ledge, relativeDensity, absorption, remarks);
    }

    SourceDraft withRole(Role chosen) {
        return new SourceDraft(id, name, chosen, place, ledge, relativeDensity, absorption, remarks);
    }

    SourceDraft withPlace(String typed) {
        return new SourceDraft(id, name, role, typed, ledge, relativeDensity, absorption, remarks);
    }

    SourceDraft withLedge(String typed) {
        return new SourceDraft(id, name, role, place, typed, relativeDensity, absorption, remarks);
    }

    SourceDraft withRelativeDensity(String typed) {
        return new SourceDraft(id, name, role, place, ledge, typed, absorption, remarks);
    }

    SourceDraft withAbsorption(String typed) {
        return new SourceDraft(id, name, role, place, ledge, relativeDensity, typed, remarks);
    }

    SourceDraft withRemarks(String typed) {
        return new SourceDraft(id, name, role, place, ledge, relativeDensity, absorption, typed);
    }
}
