package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;
import static porebench.exchange.CsvText.said;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.StudyFormat;
import porebench.record.KeptStudy;
import porebench.record.SampleStudies;
import porebench.record.Samples;

/** Studies as CSV: what is written comes back, and what is no study is refused at its cell. */
class StudyFormatTest {
    private static final String HEADING = "study_id,kind,made_on,by,layers,value,name_1,name_2,name_3";
    private static final String FIRST = "O,operators,2026-03-02,R. Vale,operator;sample;repeat,";

    private static Sheet<KeptStudy> read(String... lines) {
        return CsvSheets.one("studies.csv", bytes(lines), new StudyFormat());
    }

    private static Sheet<KeptStudy> operators(String first, String... rest) {
        String[] lines = new String[rest.length + 2];
        lines[0] = HEADING;
        lines[1] = FIRST + first;
        for (int i = 0; i < rest.length; i++) {
            lines[i + 2] = "O,,,,," + rest[i];
        }
        return read(lines);
    }

    @Test
    void studiesComeBackDigitForDigitNameForNameAndInTheirOrder() throws IOException {
        List<KeptStudy> studies = List.of(
                SampleStudies.operators("O"),
                SampleStudies.layers("L"),
                SampleStudies.laboratories("G"),
                SampleStudies.full("F", Samples.AWKWARD, Samples.AWKWARD_NOTE));
        StringWriter text = new StringWriter();
        Export.write(new StudyFormat(), studies, text);
        Sheet<KeptStudy> sheet =
                CsvSheets.one("studies.csv", text.toString().getBytes(StandardCharsets.UTF_8), new StudyFormat());
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.values()).isEqualTo(studies);
        assertThat(sheet.rows()).extracting(Sheet.Row::line).startsWith(2, 10, 15, 21);
    }

    @Test
    void aFileNeedsNoMoreColumnsThanItsStudiesHaveLayers() {
        Sheet<KeptStudy> sheet = operators(
                "5.40,Ada,x,1",
                "5.35,Ada,x,2",
                "6.1,Ada,y,1",
                "6,Ada,y,2",
                "5,Bo,x,1",
                "5,Bo,x,2",
                "6,Bo,y,1",
                "6,Bo,y,2");
        assertThat(sheet.problems()).isEmpty();
        KeptStudy study = sheet.values().get(0);
        assertThat(study.layers()).containsExactly("operator", "sample", "repeat");
        assertThat(study.readings()).hasSize(8);
        assertThat(study.readings().get(0))
                .isEqualTo(new KeptStudy.Reading(List.of("Ada", "x", "1"), new BigDecimal("5.40")));
        assertThat(study.title() + study.fileName() + study.remarks()).isEmpty();
        Sheet<KeptStudy> narrow = read("study_id,kind,made_on,by,layers,value,name_1", FIRST + "5.4,Ada");
        assertThat(found(narrow))
                .containsExactly("2:5 layers study.column-of-layer", "2:5 layers study.column-of-layer");
        assertThat(said(narrow))
                .contains("studies.csv, line 2, column 5: The names of sample stand in column name_2, which is "
                        + "missing. Add the column.");
    }

    @Test
    void whatTheStudyItselfWouldRefuseIsRefusedAtItsCell() {
        Sheet<KeptStudy> twice = operators("5.4,Ada,x,1", "5.3,Ada,x,1", "5.4,Bo,x,1");
        assertThat(found(twice)).contains("3:9 name_3 study.repeat-twice");
        assertThat(said(twice))
                .contains("studies.csv, line 3, column 9: Repeat 1 of sample x by Ada stands here again; it is "
                        + "already in line 2. Remove one of the two.");
        assertThat(twice.rows()).isEmpty();
        Sheet<KeptStudy> alone =
                read("study_id,kind,made_on,by,layers,value,name_1", "L,layers,2026-03-02,R. Vale,day,5.4,d1");
        assertThat(found(alone)).containsExactly("2:6 value study.too-few-rows");
        assertThat(alone.rows()).isEmpty();
    }

    @Test
    void layersThatCannotBeAreNamed() {
        assertThat(layers("LAYERS", "day;;meter")).containsExactly("2:5 layers study.layer-without-name");
        assertThat(layers("layers", "day;day")).containsExactly("2:5 layers study.layer-twice");
        assertThat(layers("layers", "a;b;c;d;e;f;g")).containsExactly("2:5 layers study.too-many-layers");
        assertThat(layers("operators", "sample;operator;repeat")).containsExactly("2:5 layers study.layers-of-kind");
        assertThat(layers("laboratories", "laboratory")).containsExactly("2:5 layers study.layers-of-kind");
        assertThat(layers("layers", "")).containsExactly("2:5 layers csv.required");
        assertThat(layers("days", "day"))
                .containsExactly(
                        "2:2 kind csv.not-a-choice",
                        "2:8 name_2 study.name-beyond-layers",
                        "2:9 name_3 study.name-beyond-layers");
    }

    private static List<String> layers(String kind, String layers) {
        return found(read(HEADING, "L," + kind + ",2026-03-02,R. Vale," + layers + ",5.4,x,y,z"));
    }

    @Test
    void everyFaultOfAStudyIsToldAtOnce() {
        assertThat(found(read(
                        HEADING,
                        "L,layers,2026-02-30,,day;meter,\"5,4\",d1,,beyond",
                        "L,laboratories,,,,1e16,d1,B-1,")))
                .containsExactly(
                        "2:3 made_on csv.not-a-date",
                        "2:4 by csv.required",
                        "2:6 value csv.decimal-comma",
                        "2:8 name_2 csv.required",
                        "2:9 name_3 study.name-beyond-layers",
                        "3:2 kind csv.disagrees",
                        "3:6 value csv.out-of-range");
    }
}
