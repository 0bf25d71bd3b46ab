package porebench.desk;

import java.util.ArrayList;
import java.util.List;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.book.Version;

/** The profiles a lab book lets a person choose from. */
public final class ProfileOffer {
    private ProfileOffer() {}

    /** Returns those of named standards first, then the laboratory's own; one of its own under a standard's name replaces that. */
    public static List<Profile> with(List<Version<LaboratoryProfile>> kept) {
        List<Profile> offered = new ArrayList<>(Profiles.named());
        kept.stream().map(version -> version.value().profile()).forEach(own -> {
            offered.removeIf(named -> named.id().equals(own.id()));
            offered.add(own);
        });
        return offered;
    }
}
