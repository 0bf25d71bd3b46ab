package porebench.exchange.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.Table;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.column.ProfileColumns;

/** {@code profiles.csv}: one row a figure, the rows of a laboratory's own profile together stating it. */
public final class ProfileFormat implements Format<LaboratoryProfile> {
    private static final List<String> SHARED = List.of("profile_title", "edition", "based_on");

    private static final Headings COLUMNS = Headings.of(ProfileColumns.ALL, ProfileColumns.OF_FIGURE);

    @Override
    public Class<LaboratoryProfile> type() {
        return LaboratoryProfile.class;
    }

    @Override
    public String fileName() {
        return "profiles.csv";
    }

    @Override
    public Headings columns() {
        return COLUMNS;
    }

    @Override
    public Stated stated() {
        return Stated.of(ProfileColumns.ID, ProfileColumns.ALL, ProfileColumns.OF_FIGURE);
    }

    @Override
    public List<Sheet.Row<LaboratoryProfile>> read(Table table) {
        List<Sheet.Row<LaboratoryProfile>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, "profile_id", SHARED)) {
            Map<FigureName, Figure> figures = figures(group);
            group.stating("profile_title").word("profile_title");
            Profile standard = group.stating("based_on")
                    .optionalWord("based_on")
                    .flatMap(Profiles::find)
                    .orElseGet(Profiles::standard);
            Arrays.stream(FigureName.values())
                    .filter(FigureName::mayBeAbsent)
                    .forEach(name -> figures.putIfAbsent(name, standard.figure(name)));
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
        for (HeadedRow entry : group.rows()) {
            SheetReader cells = SheetReader.of(entry);
            Optional<ProfileColumns.Named> named = ProfileColumns.OF_FIGURE.read(cells);
            Optional<FigureName> name = ProfileColumns.FIGURE.read(cells);
            if (name.isEmpty()) {
                continue;
            }
            ProfileColumns.VALUE
                    .read(cells)
                    .flatMap(name.get()::check)
                    .ifPresent(problem -> entry.error("value", problem));
            Integer twin = seen.putIfAbsent(name.get(), entry.line());
            if (twin != null) {
                entry.error("figure", "csv.duplicate", name.get().symbol(), twin);
            }
            if (entry.isGood()) {
                named.ifPresent(good -> figures.put(good.name(), good.figure()));
            }
        }
        return figures;
    }

    @Override
    public List<List<String>> write(LaboratoryProfile value) {
        return Arrays.stream(FigureName.values())
                .map(name -> {
                    SheetCells cells = SheetCells.ofWhole(ProfileColumns.ALL, value);
                    ProfileColumns.OF_FIGURE.write(
                            new ProfileColumns.Named(name, value.profile().figure(name)), cells);
                    return cells.under(COLUMNS.all());
                })
                .toList();
    }
}
