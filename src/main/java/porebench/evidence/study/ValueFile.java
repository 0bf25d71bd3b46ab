package porebench.evidence.study;

import java.util.ArrayList;
import java.util.List;
import porebench.record.KeptStudy;
import porebench.record.column.CellShape;
import porebench.record.column.StatedColumn;

/** The files of numbers that are read and hold no records: what is asked for beside the number, for each question. */
public enum ValueFile {
    /** Sets of numbers of any size. */
    SETS("sets.csv", List.of("set")),
    /** Subgroups of a control chart. */
    SUBGROUPS("chart.csv", List.of("subgroup")),
    /** Air and density of the same readings; the number is the density. */
    PAIRS(
            "pairs.csv",
            List.of("reading_id"),
            StatedColumn.filled(CellShape.Kind.NUMBER, "air_pct").in("%")),
    /** Trials on one side of a change. */
    SIDE("compare.csv", List.of("determination")),
    /** Operators read the same samples. */
    OPERATORS("gauge-study.csv", KeptStudy.Layout.OPERATORS.columns()),
    /** Groups within groups: each file has columns of its own. */
    LAYERS("components.csv", KeptStudy.Layout.LAYERS.columns()),
    /** Laboratories tested the same material. */
    LABORATORIES("interlab.csv", KeptStudy.Layout.LABORATORIES.columns());

    /** The column of the numbers. */
    public static final String VALUE = "value";

    private final String example;
    private final List<StatedColumn> beside;

    ValueFile(String example, List<String> texts, StatedColumn... numbers) {
        this.example = example;
        List<StatedColumn> all = new ArrayList<>();
        texts.forEach(name -> all.add(StatedColumn.filled(CellShape.Kind.TEXT, name)));
        all.addAll(List.of(numbers));
        this.beside = List.copyOf(all);
    }

    /** Returns a name for such a file, which may have any. */
    public String example() {
        return example;
    }

    /** Returns the columns that are asked for beside the number; none where each file has its own. */
    public List<String> asked() {
        return beside.stream().map(StatedColumn::name).toList();
    }

    /** Returns all columns that are fixed, that of the numbers last. */
    public List<StatedColumn> columns() {
        List<StatedColumn> all = new ArrayList<>(beside);
        all.add(StatedColumn.filled(CellShape.Kind.NUMBER, VALUE));
        return List.copyOf(all);
    }

    /** Returns how many columns of other names the file may have, which say what a number belongs to. */
    public int othersAtMost() {
        return this == LAYERS ? KeptStudy.MOST_LAYERS : 0;
    }
}
