package porebench.exchange.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.Table;
import porebench.method.sample.Batch;
import porebench.record.MixDesign;
import porebench.record.column.MixColumns;

/** {@code mix-design.csv}: one row a constituent, the rows of a mix together stating it. */
public final class MixDesignFormat implements Format<MixDesign> {
    private static final String ID = MixColumns.ID.heading();

    private static final Headings HEADINGS = Headings.of(MixColumns.ALL, MixColumns.OF_CONSTITUENT);

    private static final List<String> SHARED = Stream.concat(
                    MixColumns.ALL.neededHeadings().stream(), MixColumns.ALL.extraHeadings().stream())
            .filter(heading -> !heading.equals(ID) && !heading.equals(MixColumns.CONSTITUENTS.heading()))
            .toList();

    @Override
    public Class<MixDesign> type() {
        return MixDesign.class;
    }

    @Override
    public String fileName() {
        return "mix-design.csv";
    }

    @Override
    public Headings columns() {
        return HEADINGS;
    }

    @Override
    public Stated stated() {
        return Stated.of(MixColumns.ID, MixColumns.ALL, MixColumns.OF_CONSTITUENT);
    }

    @Override
    public List<Sheet.Row<MixDesign>> read(Table table) {
        List<Sheet.Row<MixDesign>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, ID, SHARED)) {
            Optional<MixDesign> mix = read(group);
            if (group.checkGood(table, ID)) {
                mix.ifPresent(design -> good.add(new Sheet.Row<>(group.first().line(), design)));
            }
        }
        return good;
    }

    private static Optional<MixDesign> read(RowGroup group) {
        HeadedRow measured = group.stating(MixColumns.MEASURED_DENSITY.heading());
        SheetReader about = SheetReader.of(group, List.of());
        if (about.states(MixColumns.VOLUME) && about.states(MixColumns.MEASURED_DENSITY)) {
            measured.error(MixColumns.MEASURED_DENSITY.heading(), "csv.volume-twice");
        }
        ConstituentRows constituents = ConstituentRows.read(group);
        MixColumns.WET_SIEVED
                .read(about)
                .ifPresent(wetSieved -> constituents.check(new Batch(
                        constituents.values(),
                        MixColumns.volume(MixColumns.VOLUME.read(about), MixColumns.MEASURED_DENSITY.read(about)),
                        MixColumns.TARGET_AIR.read(about).orElse(BigDecimal.ZERO),
                        wetSieved)));
        return MixColumns.ALL.read(SheetReader.of(group, constituents.values()));
    }

    @Override
    public List<List<String>> write(MixDesign value) {
        return value.batch().constituents().stream()
                .map(constituent -> {
                    SheetCells cells = SheetCells.ofWhole(MixColumns.ALL, value);
                    MixColumns.OF_CONSTITUENT.write(constituent, cells);
                    return cells.under(HEADINGS.all());
                })
                .toList();
    }
}
