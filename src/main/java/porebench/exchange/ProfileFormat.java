package porebench.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.record.LaboratoryProfile;

/** {@code profiles.csv}: one row a figure, the rows of a laboratory's own profile together stating it. */
final class ProfileFormat implements Format<LaboratoryProfile> {
    private static final List<String> SHARED = List.of("profile_title", "edition", "based_on");

    private static final Columns COLUMNS =
            Columns.of("profile_id,profile_title,edition,based_on,figure,value,mark,clause");

    @Override
    public Class<LaboratoryProfile> type() {
        return LaboratoryProfile.class;
    }

    @Override
    public String fileName() {
        return "profiles.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<Sheet.Row<LaboratoryProfile>> read(Table table) {
        List<Sheet.Row<LaboratoryProfile>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, "profile_id", SHARED)) {
            Map<FigureName, Figure> figures = figures(group);
            group.stating("profile_title").word("profile_title");
            if (group.isGood()) {
                for (Problem problem : Profile.check(figures)) {
                    group.first().error("figure", problem);
                }
            }
            if (group.checkGood(table, "profile_id")) {
                good.add(new Sheet.Row<>(group.first().line(), new LaboratoryProfile(profile(group, figures))));
            }
        }
        return good;
    }

    private static Profile profile(RowGroup group, Map<FigureName, Figure> figures) {
        return new Profile(
                group.name(),
                group.stating("profile_title").text("profile_title"),
                group.stating("edition").text("edition"),
                group.stating("based_on").optionalWord("based_on"),
                figures);
    }

    private static Map<FigureName, Figure> figures(RowGroup group) {
        Map<FigureName, Figure> figures = new EnumMap<>(FigureName.class);
        Map<FigureName, Integer> seen = new EnumMap<>(FigureName.class);
        for (Entry entry : group.rows()) {
            Optional<FigureName> name = entry.choice("figure", Arrays.asList(FigureName.values()), FigureName::key);
            Optional<String> value = entry.word("value");
            Optional<Mark> mark = entry.choice("mark", Arrays.asList(Mark.values()), Mark::symbol);
            entry.word("clause");
            if (name.isEmpty()) {
                continue;
            }
            value.flatMap(name.get()::check).ifPresent(problem -> entry.error("value", problem));
            Integer twin = seen.putIfAbsent(name.get(), entry.line());
            if (twin != null) {
                entry.error("figure", "csv.duplicate", name.get().key(), twin);
            }
            if (value.isPresent() && mark.isPresent() && entry.isGood()) {
                figures.put(name.get(), new Figure(value.get(), entry.text("clause"), mark.get()));
            }
        }
        return figures;
    }

    @Override
    public List<List<String>> write(LaboratoryProfile value) {
        Profile profile = value.profile();
        return Arrays.stream(FigureName.values())
                .map(name -> List.of(
                        profile.id(),
                        profile.title(),
                        profile.edition(),
                        profile.basedOn().orElse(""),
                        name.key(),
                        profile.figure(name).value(),
                        profile.figure(name).mark().symbol(),
                        profile.figure(name).clause()))
                .toList();
    }
}
