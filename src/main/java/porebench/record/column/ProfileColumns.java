package porebench.record.column;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;

/** The columns of a laboratory's own profile, and of its figures. */
public final class ProfileColumns {
    /**
     * A figure under its name.
     *
     * @param name its name
     * @param figure what it says
     */
    public record Named(FigureName name, Figure figure) {}

    public static final Column<Named, FigureName> FIGURE =
            Column.needed("figure", CellType.choice(FigureName.values(), FigureName::symbol), Named::name);
    public static final Column<Named, String> VALUE = Column.needed(
                    "stated", CellType.word(), (Named named) -> named.figure().value())
            .headed("value");
    public static final Column<Named, Mark> MARK = Column.needed(
            "mark",
            CellType.choice(Mark.values(), Mark::symbol),
            (Named named) -> named.figure().mark());
    public static final Column<Named, String> CLAUSE = Column.needed(
            "clause", CellType.said(), (Named named) -> named.figure().clause());

    public static final Columns<Named> OF_FIGURE =
            Columns.of("profile_figure", ProfileColumns::named, FIGURE, VALUE, MARK, CLAUSE);

    public static final Column<LaboratoryProfile, String> ID = Column.needed(
            "profile_id",
            CellType.word(),
            (LaboratoryProfile own) -> own.profile().id());
    public static final Column<LaboratoryProfile, String> TITLE = Column.needed(
                    "title",
                    CellType.said(),
                    (LaboratoryProfile own) -> own.profile().title())
            .headed("profile_title");
    public static final Column<LaboratoryProfile, String> EDITION = Column.needed(
            "edition", CellType.text(), (LaboratoryProfile own) -> own.profile().edition());
    public static final Column<LaboratoryProfile, String> BASED_ON = Column.any(
            "based_on",
            CellType.word(),
            (LaboratoryProfile own) -> own.profile().basedOn());
    public static final Column<LaboratoryProfile, List<Named>> FIGURES = Column.needed(
            "figure",
            CellType.several(new Part<>(OF_FIGURE, false)),
            own -> own.profile().figures().entrySet().stream()
                    .map(entry -> new Named(entry.getKey(), entry.getValue()))
                    .toList());

    public static final Columns<LaboratoryProfile> ALL =
            Columns.of("profile", ProfileColumns::made, ID, TITLE, EDITION, BASED_ON, FIGURES);

    private ProfileColumns() {}

    private static Named named(Cells cells) {
        return new Named(cells.get(FIGURE), new Figure(cells.get(VALUE), cells.get(CLAUSE), cells.get(MARK)));
    }

    /** Figures that the program did not know yet when a profile was kept are as its standard states them. */
    private static LaboratoryProfile made(Cells cells) {
        Map<FigureName, Figure> figures = new EnumMap<>(FigureName.class);
        cells.get(FIGURES).forEach(named -> figures.put(named.name(), named.figure()));
        Optional<String> basedOn = cells.any(BASED_ON);
        Profile standard = basedOn.flatMap(Profiles::find).orElseGet(Profiles::standard);
        for (FigureName name : FigureName.values()) {
            figures.putIfAbsent(name, standard.figure(name));
        }
        return new LaboratoryProfile(
                new Profile(cells.get(ID), cells.get(TITLE), cells.get(EDITION), basedOn, figures));
    }
}
