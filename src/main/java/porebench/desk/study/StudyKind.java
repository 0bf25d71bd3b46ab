package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import porebench.port.DataTable;
import porebench.record.KeptStudy;

/** The studies there are. */
enum StudyKind {
    /** Operators read the same samples, each as often. */
    OPERATORS("operators-and-samples", KeptStudy.Layout.OPERATORS),
    /** Groups within groups. */
    LAYERS("layers", KeptStudy.Layout.LAYERS),
    /** Laboratories tested the same material. */
    LABORATORIES("laboratories", KeptStudy.Layout.LABORATORIES);

    /** What a blank form of layers has for columns; a laboratory puts its own in their place. */
    private static final List<String> EXAMPLE_LAYERS = List.of("mix", "determination", "operator");

    private final String fileName;
    private final KeptStudy.Layout layout;

    StudyKind(String fileName, KeptStudy.Layout layout) {
        this.fileName = fileName;
        this.layout = layout;
    }

    /** Returns the name its blank form is saved under unless the person says otherwise. */
    String formName() {
        return fileName + ".csv";
    }

    String pictureName(String plot) {
        return fileName + "-" + plot + ".png";
    }

    /** Returns the columns a file needs besides the value; none for any columns. */
    List<String> columns() {
        return layout.columns();
    }

    /** Returns how its readings are laid out. */
    KeptStudy.Layout layout() {
        return layout;
    }

    /** Returns a blank form: the heading and nothing below. */
    DataTable form() {
        List<String> heading = new ArrayList<>(columns().isEmpty() ? EXAMPLE_LAYERS : columns());
        heading.add("value");
        return new DataTable(heading, List.of());
    }
}
