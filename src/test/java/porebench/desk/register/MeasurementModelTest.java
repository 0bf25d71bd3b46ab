package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.exchange.DemoYear;
import porebench.method.Problem;
import porebench.record.SourceMeasurement;
import porebench.record.book.MemoryLabBook;
import porebench.record.column.MeasurementColumns;

/** Measurements of the demo's sources, entered and corrected; today is 25 November 2026. */
class MeasurementModelTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private MemoryLabBook book;
    private DeskModel desk;
    private SourcesModel sources;
    private MeasurementModel model;

    @BeforeEach
    void fillBook() {
        book = new MemoryLabBook(DAY);
        new DemoYear().fill(book);
        desk = RegisterModelsTest.desk(book);
        sources = new SourcesModel(desk, RecordPage.texts(desk));
        model = new MeasurementModel(sources);
        sources.show("S-09");
        model.follow();
    }

    private List<String> codes() {
        return model.problems().stream().map(Problem::code).toList();
    }

    @Test
    void oneIsOfTodayAndHasAtLeastOneFigure() {
        assertThat(model.draft().text(MeasurementColumns.TESTED_ON)).isEqualTo("2026-11-25");
        assertThat(model.problems()).isEmpty();
        assertThat(model.canKeep()).isFalse();
        assertThat(codes()).contains("measurement.no-figure");
        model.type(MeasurementColumns.TESTED_BY, "R. Vale");
        model.type(MeasurementColumns.RELATIVE_DENSITY, "2.71x");
        assertThat(codes()).containsExactly("form.not-a-number", "measurement.no-figure");
        model.type(MeasurementColumns.RELATIVE_DENSITY, "2.71");
        model.type(MeasurementColumns.TESTED_ON, "2026-11-26");
        assertThat(codes()).containsExactly("measurement.to-come");
        assertThat(Refused.by(out -> model.keep("measured", out)))
                .extracting(Problem::code)
                .containsExactly("measurement.to-come");
        model.type(MeasurementColumns.TESTED_ON, "2026-11-24");
        int before = sources.measured().size();
        assertThat(Refused.by(out -> model.keep("measured", out))).isEmpty();
        assertThat(sources.measured()).hasSize(before + 1);
        assertThat(model.draft().text(MeasurementColumns.RELATIVE_DENSITY)).isEmpty();
        SourceMeasurement kept = sources.measured().get(before).measurement().value();
        assertThat(kept.sourceId().text()).isEqualTo("S-09");
        assertThat(kept.testedBy()).isEqualTo("R. Vale");
        assertThat(kept.relativeDensity().orElseThrow().toPlainString()).isEqualTo("2.71");
    }

    @Test
    void aCorrectionIsANewVersionAndTheOneBeforeStays() {
        var version = sources.measured().get(0).measurement();
        model.correct(version);
        assertThat(model.corrected()).contains(version.value());
        assertThat(model.draft().text(MeasurementColumns.TESTED_BY))
                .isEqualTo(version.value().testedBy());
        model.type(MeasurementColumns.ABSORPTION, "1.9");
        assertThat(Refused.by(out -> model.keep("misread", out))).isEmpty();
        assertThat(model.corrected()).isEmpty();
        assertThat(book.history(SourceMeasurement.class, version.value().recordId()))
                .extracting(one -> one.number() + " " + one.stamp().why())
                .endsWith("2 misread");
    }

    @Test
    void textsThatNobodyCanReadAreRefusedAsInAFile() {
        model.type(MeasurementColumns.TESTED_BY, "R.\u202EVale");
        model.type(MeasurementColumns.ABSORPTION, "1.2");
        assertThat(codes()).containsExactly("text.unseen");
        assertThat(model.canKeep()).isFalse();
    }

    @Test
    void anotherSourceBeginsAnew() {
        model.type(MeasurementColumns.ABSORPTION, "1.2");
        sources.show("S-05");
        model.follow();
        assertThat(model.draft().text(MeasurementColumns.ABSORPTION)).isEmpty();
        sources.begin();
        model.follow();
        assertThat(model.problems()).isEmpty();
    }
}
