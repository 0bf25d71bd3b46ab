package porebench.desk.frame;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import porebench.desk.Unsaved;
import porebench.record.id.MixId;

/** On which pages something is typed and not saved. */
final class TypedPages {
    /** What a step of the selected mix keeps is led by a word and named by the mix. */
    private static final Map<String, String> STEPS = Map.of("mix/", "mix", "trial/", "trials", "issue/", "factor");

    private static final Map<String, String> REGISTERS = Map.of(
            "source/", "sources",
            "group/", "groups",
            "meter/", "meters",
            "calibration/", "meters",
            "equipment/", "equipment",
            "production/", "production",
            "reading/", "readings",
            "plan/", "plan",
            "study/", "studies");

    private TypedPages() {}

    /**
     * Returns the names of the pages, in the order of the alphabet.
     *
     * @param mix the selected mix; without one a new mix may be begun on the first step
     */
    static Set<String> of(Unsaved unsaved, Optional<MixId> mix) {
        Set<String> pages = new TreeSet<>();
        String id = mix.map(MixId::text).orElse("");
        STEPS.forEach((lead, page) -> {
            String name = lead + id;
            List<String> corrections = unsaved.names(name + '\t');
            if (unsaved.find(name).isPresent() || !corrections.isEmpty()) {
                pages.add(page);
            }
        });
        REGISTERS.forEach((lead, page) -> {
            if (!unsaved.names(lead).isEmpty()) {
                pages.add(page);
            }
        });
        return pages;
    }
}
