package porebench.store;

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
import porebench.record.RecordKind;

/** The tables {@code profile} and {@code profile_figure}. */
final class ProfileTable implements RecordTable<LaboratoryProfile> {
    private static final String FIGURE = "profile_figure";

    @Override
    public RecordKind kind() {
        return RecordKind.PROFILE;
    }

    @Override
    public String name() {
        return "profile";
    }

    @Override
    public List<String> partTables() {
        return List.of(FIGURE);
    }

    @Override
    public StoredRecord rows(LaboratoryProfile own) {
        Profile profile = own.profile();
        StoredRow row = new StoredRow(name())
                .cell("profile_id", profile.id())
                .cell("title", profile.title())
                .cell("edition", profile.edition())
                .text("based_on", profile.basedOn());
        List<StoredRow> figures = profile.figures().entrySet().stream()
                .map(entry -> figure(entry.getKey(), entry.getValue()))
                .toList();
        return new StoredRecord(row, figures);
    }

    private static StoredRow figure(FigureName name, Figure figure) {
        return new StoredRow(FIGURE)
                .cell("figure", name.key())
                .cell("stated", figure.value())
                .cell("clause", figure.clause())
                .cell("mark", figure.mark().symbol());
    }

    @Override
    public LaboratoryProfile value(StoredRecord rows) {
        Map<FigureName, Figure> figures = new EnumMap<>(FigureName.class);
        for (StoredRow part : rows.parts()) {
            figures.put(
                    FigureName.ofKey(part.text("figure")).orElseThrow(),
                    new Figure(
                            part.text("stated"), part.text("clause"), part.word("mark", Mark.values(), Mark::symbol)));
        }
        StoredRow row = rows.row();
        Optional<String> basedOn = row.textIfAny("based_on");
        complete(figures, basedOn);
        return new LaboratoryProfile(
                new Profile(row.text("profile_id"), row.text("title"), row.text("edition"), basedOn, figures));
    }

    /** Adds the figures that the program did not know yet when the profile was kept, as its standard states them. */
    private static void complete(Map<FigureName, Figure> figures, Optional<String> basedOn) {
        Profile standard = basedOn.flatMap(Profiles::find).orElseGet(Profiles::standard);
        for (FigureName name : FigureName.values()) {
            figures.putIfAbsent(name, standard.figure(name));
        }
    }
}
