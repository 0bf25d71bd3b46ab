package porebench.record;

import porebench.method.Profile;

/**
 * A laboratory's own copy of a profile, with its changed figures.
 *
 * @param profile the copy; it names the profile it started from
 */
public record LaboratoryProfile(Profile profile) implements Kept {
    @Override
    public RecordKind kind() {
        return RecordKind.PROFILE;
    }

    @Override
    public String recordId() {
        return profile.id();
    }
}
