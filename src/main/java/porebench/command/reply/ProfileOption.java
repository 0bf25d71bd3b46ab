package porebench.command.reply;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.MixDesign;

/** {@code --profile}: the profile whose rules hold. */
public final class ProfileOption {
    @Option(names = "--profile", paramLabel = "<id>")
    private @Nullable String id;

    /** Returns the profile asked for, the default one when none is, or adds the problem that there is none. */
    public Profile profile(List<Problem> problems) {
        return find(Optional.ofNullable(id), problems);
    }

    /**
     * Returns the profile asked for, else the one a mix names, or the default one with a warning: a file does not bring a
     * laboratory's own.
     */
    public Profile profile(Optional<MixDesign> mix, List<Problem> problems) {
        if (id != null || mix.isEmpty()) {
            return profile(problems);
        }
        String named = mix.get().profileId();
        return Profiles.find(named).orElseGet(() -> {
            problems.add(Problem.warning(
                    "profile",
                    "command.profile-of-mix-unknown",
                    named,
                    Profiles.standard().title(),
                    known()));
            return Profiles.standard();
        });
    }

    /** Returns the profile with an id, the default one when none is given, or adds the problem that there is none. */
    public static Profile find(Optional<String> id, List<Problem> problems) {
        Optional<Profile> found = id.isEmpty() ? Optional.of(Profiles.standard()) : Profiles.find(id.get());
        if (found.isEmpty()) {
            problems.add(Problem.error("profile", "profile.unknown", id.get(), known()));
        }
        return found.orElseGet(Profiles::standard);
    }

    private static String known() {
        return String.join(", ", Profiles.named().stream().map(Profile::id).toList());
    }
}
