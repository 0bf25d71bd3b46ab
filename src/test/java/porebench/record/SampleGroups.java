package porebench.record;

import java.util.List;
import java.util.stream.Stream;
import porebench.method.Role;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/** Invented groups of mixes, and mixes of one sand and one stone. */
public final class SampleGroups {
    private SampleGroups() {}

    /** A cubic metre with so many kilograms of sand S-1 and stone S-2, at SSD. */
    public static MixDesign mix(String id, String sand, String stone) {
        return Samples.mix(
                id,
                Samples.constituent("Sand", Role.FINE, "S-1", sand),
                Samples.constituent("Stone", Role.COARSE, "S-2", stone));
    }

    /** A group that is tested on M-1, within 3 points and 3 %. */
    public static FactorGroup group(String id, String... members) {
        return within(id, "3", members);
    }

    public static FactorGroup within(String id, String tolerance, String... members) {
        return new FactorGroup(
                        new GroupId(id),
                        "One sand, one stone",
                        new MixId("M-1"),
                        Samples.number(tolerance),
                        Stream.of(members).map(MixId::new).toList(),
                        "within " + tolerance + ": " + String.join(" ", members))
                .naming();
    }

    /** Every text as awkward as it may be. */
    public static FactorGroup full() {
        return new FactorGroup(
                new GroupId("G-;|%1"),
                Samples.AWKWARD,
                new MixId("M-1"),
                Samples.number("3.0"),
                List.of(new MixId("M-1"), new MixId("M;2|%:3")),
                Samples.AWKWARD_NOTE);
    }
}
