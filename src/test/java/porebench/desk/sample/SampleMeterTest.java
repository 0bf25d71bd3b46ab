package porebench.desk.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** Which meter the page of the sample proposes, and which it offers. */
class SampleMeterTest {
    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);

    private static Meter meter(String id, boolean inService) {
        Meter plain = Samples.meter(id, MeterType.B);
        return new Meter(
                plain.id(),
                plain.type(),
                plain.serial(),
                plain.bowl(),
                plain.divisionPercent(),
                plain.scaleTopPercent(),
                inService,
                plain.remarks());
    }

    private SampleModel opened() {
        SampleModel model = new SampleModel(mixDesk.desk);
        mixDesk.select("M-1");
        model.followDesk();
        return model;
    }

    @Test
    void theOnlyMeterInServiceIsProposedAndOneOutOfServiceIsNotOffered() {
        mixDesk.keepElsewhere(Draft.of(meter("B-9", false)));
        SampleModel model = opened();
        assertThat(model.draft().text(SampleFields.METER)).isEqualTo("B-1");
        assertThat(model.meters()).extracting(Meter::id).containsExactly(new MeterId("B-1"));
        model.type(SampleFields.METER, "B-9");
        assertThat(model.meters()).extracting(Meter::id).containsExactly(new MeterId("B-1"), new MeterId("B-9"));
    }

    @Test
    void ofSeveralMetersThatOfTheNewestTrialIsProposed() {
        mixDesk.keepElsewhere(Draft.of(meter("B-2", true)));
        assertThat(opened().draft().text(SampleFields.METER)).isEmpty();
        mixDesk.keepElsewhere(
                Draft.of(Samples.determination("M-1/1", "M-1")), Draft.of(Samples.trial("T-1", "M-1", "M-1/1", "5.4")));
        mixDesk.desk.refresh();
        assertThat(opened().draft().text(SampleFields.METER)).isEqualTo("B-1");
    }

    @Test
    void whatIsChosenStandsInTheDraft() {
        SampleModel model = opened();
        assertThat(model.mix()).map(mix -> mix.value().recordId()).contains("M-1");
        model.type(SampleFields.MASS_UNIT, MassUnit.POUND.symbol());
        assertThat(model.massUnit()).isEqualTo(MassUnit.POUND);
        model.chooseUnit(SampleFields.BOWL, VolumeUnit.CUBIC_FOOT.symbol());
        assertThat(model.draft().unit(SampleFields.BOWL)).isEqualTo(VolumeUnit.CUBIC_FOOT.symbol());
    }

    @Test
    void aMixThatIsSelectedAlreadyIsReadAtOnce() {
        mixDesk.select("M-1");
        SampleModel model = new SampleModel(mixDesk.desk);
        assertThat(model.mix()).map(mix -> mix.value().recordId()).contains("M-1");
        assertThat(model.reading().orElseThrow().sample()).isPresent();
    }

    @Test
    void aMeterThatSomebodyElseCorrectsIsFollowed() {
        SampleModel model = opened();
        assertThat(model.reading().orElseThrow().meter()).map(Meter::inService).contains(true);
        Books.correct(mixDesk.book, meter("B-1", false));
        mixDesk.desk.refresh();
        model.followDesk();
        assertThat(model.reading().orElseThrow().meter()).map(Meter::inService).contains(false);
    }

    /** M-2 has one aggregate; the moisture of the second of M-1 stands in the draft. */
    @Test
    void theDraftOfOneMixIsNotReadAgainstAnother() {
        mixDesk.keepElsewhere(Draft.of(Samples.mix("M-2", Samples.constituent("Stone", Role.COARSE, "S-2", "1050"))));
        SampleModel model = opened();
        mixDesk.select("M-2");
        model.type(SampleFields.TRIALS, "4");
        assertThat(model.reading()).isEmpty();
        model.followDesk();
        assertThat(model.reading()).isPresent();
    }
}
