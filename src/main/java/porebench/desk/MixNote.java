package porebench.desk;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.record.id.MixId;

/** What the list of mixes says of a mix beside its state, in a few words, such as how long a soak still takes; empty for nothing. */
@FunctionalInterface
public interface MixNote extends Function<MixId, Optional<String>> {
    /** Says nothing of any mix. */
    MixNote NONE = mix -> Optional.empty();

    /** Returns what says this and another thing of a mix. */
    default MixNote and(MixNote other) {
        return mix -> {
            String both = Stream.of(apply(mix), other.apply(mix))
                    .flatMap(Optional::stream)
                    .collect(Collectors.joining(" · "));
            return Optional.of(both).filter(words -> !words.isEmpty());
        };
    }
}
