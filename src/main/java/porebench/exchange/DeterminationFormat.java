package porebench.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.Determination;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** {@code determinations.csv}: one row a determination. */
final class DeterminationFormat implements Format.RowByRow<Determination> {
    private static final Columns COLUMNS =
            Columns.of("determination_id,mix_id,mix_version,opened_on", "purpose,source_versions,simulated");

    @Override
    public Class<Determination> type() {
        return Determination.class;
    }

    @Override
    public String fileName() {
        return "determinations.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("determination_id");
    }

    @Override
    public Optional<Determination> read(Entry entry) {
        Optional<DeterminationId> id = entry.id("determination_id", DeterminationId::new);
        Optional<MixId> mixId = entry.id("mix_id", MixId::new);
        Optional<Integer> version = entry.whole("mix_version", 1);
        Optional<LocalDate> openedOn = entry.date("opened_on");
        Map<SourceId, Integer> sources = IdVersions.read(entry, "source_versions", SourceId::new);
        Optional<Boolean> simulated = entry.optionalYesNo("simulated");
        if (!entry.isGood() || id.isEmpty() || mixId.isEmpty() || version.isEmpty() || openedOn.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Determination(
                id.get(),
                mixId.get(),
                version.get(),
                sources,
                openedOn.get(),
                entry.text("purpose"),
                simulated.orElse(false)));
    }

    @Override
    public List<String> row(Determination value) {
        return List.of(
                value.id().text(),
                value.mixId().text(),
                Integer.toString(value.mixVersion()),
                value.openedOn().toString(),
                value.purpose(),
                IdVersions.written(value.sourceVersions(), SourceId::text),
                value.simulated() ? "yes" : "");
    }
}
