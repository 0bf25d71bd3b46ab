package porebench.evidence.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/**
 * The revisions that the brackets at the end of a sealed text name: one, or those of all rows of a plant's card.
 *
 * @param issues the revisions, in the order of the names
 * @param seal what a text of them is sealed with
 */
record SealedNames(List<FactorIssue> issues, CardSeal seal) {
    private static final Pattern NAME = Pattern.compile("(.+)/r([1-9]\\d{0,8})");
    private static final Pattern BETWEEN = Pattern.compile("(?<=/r[1-9]\\d{0,8})" + Pattern.quote(CardSeal.BETWEEN));

    SealedNames {
        issues = List.copyOf(issues);
    }

    /**
     * Finds what the end of a text may name: the name of a mix may have brackets and plus signs itself.
     *
     * @return every reading of it of which the lab book holds all revisions
     */
    static List<SealedNames> in(LabBook book, String body) {
        List<SealedNames> found = new ArrayList<>();
        for (int from = body.lastIndexOf('['); from >= 0; from = body.lastIndexOf('[', from - 1)) {
            String inside = body.substring(from + 1).stripTrailing();
            if (inside.endsWith("]")) {
                String names = inside.substring(0, inside.length() - 1);
                of(book, List.of(names)).ifPresent(found::add);
                List<String> several = Arrays.asList(BETWEEN.split(names));
                if (several.size() > 1) {
                    of(book, several).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private static Optional<SealedNames> of(LabBook book, List<String> names) {
        List<FactorIssue> issues = new ArrayList<>();
        List<CardSeal> seals = new ArrayList<>();
        for (String one : names) {
            Matcher named = NAME.matcher(one);
            if (!named.matches()) {
                return Optional.empty();
            }
            String name = FactorIssue.idOf(new MixId(named.group(1)), Integer.parseInt(named.group(2)));
            book.latest(FactorIssue.class, name).ifPresent(version -> issues.add(version.value()));
            CardSeal.of(book, name).ifPresent(seals::add);
        }
        return issues.size() == names.size() && seals.size() == names.size()
                ? CardSeal.together(seals).map(seal -> new SealedNames(issues, seal))
                : Optional.empty();
    }
}
