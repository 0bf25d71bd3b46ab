package porebench.record.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import porebench.method.Glyphs;
import porebench.method.Problem;
import porebench.method.sample.Constituent;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.ChangeDecision;
import porebench.record.Determination;
import porebench.record.Equipment;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.KeptStudy;
import porebench.record.Laboratory;
import porebench.record.LaboratoryProfile;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.SheetPhoto;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.TakenDoubt;
import porebench.record.TestPlan;
import porebench.record.Trial;

/**
 * What the names of records and the words of people may hold: one rule for window, command line and files.
 *
 * <p>The name of a record is one line of characters that can be seen, and short enough to stand on a card. Other texts are
 * one line, or notes of several. None holds control characters, marks that turn the direction of writing, or what cannot be
 * seen: they make a card say something else than the lab book holds. The lengths are common practice, no source.
 */
public final class Wording {
    private final Kept record;
    private final List<Problem> problems = new ArrayList<>();

    private Wording(Kept record) {
        this.record = record;
    }

    /** How a text is written, and how long it may be, in characters. */
    enum Form {
        NAME(60, Glyphs::inName),
        /** The name of a trial, a determination or a calibration begins with that of its mix or meter. */
        LONG_NAME(100, Glyphs::inName),
        /** The name of a photo begins with that of its trial. */
        LONGER_NAME(120, Glyphs::inName),
        LINE(200, Glyphs::inLine),
        NOTE(4000, Glyphs::inNote),
        /** A file with its folders: as long as file systems let it be, with what stands before it. */
        PLACE(5000, Glyphs::inLine);

        private final int longest;
        private final IntFunction<Optional<Glyphs.Unseen>> fault;

        Form(int longest, IntFunction<Optional<Glyphs.Unseen>> fault) {
            this.longest = longest;
            this.fault = fault;
        }

        /** Returns the length of a text that is too long. */
        private Optional<Integer> length(String text) {
            return Optional.of(text.codePointCount(0, text.length())).filter(length -> length > longest);
        }

        /** Returns the first character of a text that may not stand in it. */
        private Optional<Unseen> unseen(String text) {
            if (text.chars().allMatch(each -> each >= ' ' && each <= '~')) {
                return Optional.empty();
            }
            int[] characters = text.codePoints().toArray();
            for (int at = 0; at < characters.length; at++) {
                Optional<Glyphs.Unseen> found = fault.apply(characters[at]);
                if (found.isPresent()) {
                    return Optional.of(new Unseen(found.get(), characters[at], at + 1));
                }
            }
            return Optional.empty();
        }
    }

    /** A character that may not stand in a text, and its place, counted from 1. */
    private record Unseen(Glyphs.Unseen fault, int character, int place) {}

    /** Returns what is wrong with the texts of a record, under the fields of its form; empty when nothing is. */
    public static List<Problem> check(Kept record) {
        Wording wording = new Wording(record);
        wording.look();
        return List.copyOf(wording.problems);
    }

    /**
     * Returns what is wrong with the texts of a correction; what stood so in the version before is left as it is, so that an
     * old record can still be corrected.
     */
    public static List<Problem> checkCorrection(Kept before, Kept record) {
        List<Problem> old = check(before);
        return check(record).stream().filter(problem -> !old.contains(problem)).toList();
    }

    /**
     * Returns what a form is to say about the texts of what is typed, and about the name of a new record.
     *
     * @param before the version it corrects; empty for a new record
     * @param names the names that are there
     */
    public static List<Problem> ofForm(Kept record, Optional<? extends Kept> before, Namesakes names) {
        if (before.isPresent()) {
            return checkCorrection(before.get(), record);
        }
        List<Problem> problems = new ArrayList<>(check(record));
        names.look(record).ifPresent(problems::add);
        return problems;
    }

    /** Returns what is wrong with the name of the person who keeps something and the reason, if anything is. */
    public static List<Problem> checkStamp(String who, String why) {
        List<Problem> problems = new ArrayList<>();
        stamp(problems, "who", "text-person", Form.LINE, who);
        stamp(problems, "why", "text-reason", Form.NOTE, why);
        return problems;
    }

    private static void stamp(List<Problem> problems, String field, String word, Form form, String text) {
        form.length(text)
                .ifPresent(length -> problems.add(
                        Problem.error(field, "stamp.too-long", new Problem.Word(word), length, form.longest)));
        form.unseen(text)
                .ifPresent(unseen -> problems.add(Problem.error(
                        field,
                        "stamp.unseen",
                        new Problem.Word(word),
                        new Problem.Word(unseen.fault().word()),
                        Glyphs.code(unseen.character()),
                        unseen.place())));
    }

    /**
     * Returns why some drafts must not be kept for their names or texts; empty when they may.
     *
     * @param book where they are to be kept
     * @param drafts what is to be kept
     * @param who the person who keeps them
     * @param why the reason
     */
    public static List<Problem> refusals(Records book, List<Draft> drafts, String who, String why) {
        List<Problem> problems = new ArrayList<>(checkStamp(who, why));
        Namesakes namesakes = new Namesakes(book)
                .knowing(drafts.stream().filter(Draft::isNew).map(Draft::value).toList());
        for (Draft draft : drafts) {
            problems.addAll(ofDraft(book, draft));
            if (draft.isNew()) {
                namesakes.meet(draft.value()).filter(Problem::isError).ifPresent(problems::add);
            }
        }
        return problems;
    }

    /** Returns what is wrong with the texts of a draft; empty when nothing is. */
    public static List<Problem> ofDraft(Records book, Draft draft) {
        List<Problem> found = check(draft.value());
        Optional<? extends Version<? extends Kept>> before = found.isEmpty() || draft.isNew()
                ? Optional.empty()
                : book.latest(draft.value().kind().type(), draft.value().recordId());
        return before.map(version -> checkCorrection(version.value(), draft.value()))
                .orElse(found);
    }

    private void look() {
        switch (record.kind()) {
            case LABORATORY -> laboratory((Laboratory) record);
            case PROFILE -> profile((LaboratoryProfile) record);
            case SOURCE -> source((Source) record);
            case EQUIPMENT -> equipment((Equipment) record);
            case METER -> meter((Meter) record);
            case METER_CALIBRATION -> calibration((MeterCalibration) record);
            case MIX -> mix((MixDesign) record);
            case DETERMINATION -> determination((Determination) record);
            case TRIAL -> trial((Trial) record);
            case FACTOR_ISSUE -> issue((FactorIssue) record);
            case CARD_PRINT -> print((CardPrint) record);
            case STUDY -> study((KeptStudy) record);
            case SHEET_PHOTO -> photo((SheetPhoto) record);
            case SOURCE_MEASUREMENT -> measurement((SourceMeasurement) record);
            case PRODUCTION -> production((Production) record);
            case FACTOR_GROUP -> group((FactorGroup) record);
            case TEST_PLAN -> plan((TestPlan) record);
            case FACTOR_PROPOSAL -> proposal((FactorProposal) record);
            case CHANGE_DECISION -> decision((ChangeDecision) record);
            case CARD_STEP -> step((CardStep) record);
            case FIELD_READING -> FieldWording.look((FieldReading) record, this::text);
        }
    }

    private void laboratory(Laboratory laboratory) {
        text("name", "text-name", Form.LINE, laboratory.name());
        text("address", "text-address", Form.NOTE, laboratory.address());
    }

    private void profile(LaboratoryProfile profile) {
        text("id", "text-id", Form.NAME, profile.recordId());
        text("title", "text-title", Form.LINE, profile.profile().title());
    }

    private void source(Source source) {
        text("id", "text-id", Form.NAME, source.recordId());
        text("name", "text-name", Form.LINE, source.name());
        text("place", "text-place", Form.LINE, source.place());
        text("ledge", "text-ledge", Form.LINE, source.ledge());
        text("remarks", "text-remarks", Form.NOTE, source.remarks());
        source.producer().ifPresent(producer -> text("producer", "text-producer", Form.LINE, producer));
        source.product().ifPresent(product -> text("product", "text-product", Form.LINE, product));
        source.size().ifPresent(size -> text("size", "text-size", Form.LINE, size));
        source.reason().ifPresent(reason -> text("reason", "text-reason", Form.NOTE, reason));
    }

    private void equipment(Equipment piece) {
        text("id", "text-id", Form.NAME, piece.recordId());
        text("description", "text-description", Form.LINE, piece.description());
        piece.calibration().ifPresent(made -> text("certificate", "text-certificate", Form.LINE, made.certificate()));
        text("remarks", "text-remarks", Form.NOTE, piece.remarks());
    }

    private void meter(Meter meter) {
        text("id", "text-id", Form.NAME, meter.recordId());
        text("serial", "text-serial", Form.LINE, meter.serial());
        text("remarks", "text-remarks", Form.NOTE, meter.remarks());
    }

    private void calibration(MeterCalibration calibration) {
        text("id", "text-id", Form.LONG_NAME, calibration.recordId());
        text("meter", "text-meter", Form.NAME, calibration.meterId().text());
        text("by", "text-person", Form.LINE, calibration.by());
        text("remarks", "text-remarks", Form.NOTE, calibration.remarks());
    }

    private void mix(MixDesign mix) {
        text("id", "text-id", Form.NAME, mix.recordId());
        text("title", "text-title", Form.LINE, mix.title());
        mix.plant().ifPresent(plant -> text("plant", "text-plant", Form.LINE, plant));
        int row = 0;
        for (Constituent constituent : mix.batch().constituents()) {
            String field = "constituents." + row++ + ".";
            text(field + "name", "text-constituent", Form.LINE, constituent.name());
            constituent.sourceId().ifPresent(source -> text(field + "source", "text-source", Form.NAME, source));
        }
        text("remarks", "text-remarks", Form.NOTE, mix.remarks());
    }

    private void determination(Determination determination) {
        text("id", "text-id", Form.LONG_NAME, determination.recordId());
        text("purpose", "text-purpose", Form.NOTE, determination.purpose());
    }

    private void trial(Trial trial) {
        text("trialId", "text-id", Form.LONG_NAME, trial.recordId());
        text("meter", "text-meter", Form.NAME, trial.meterId().text());
        text("operator", "text-person", Form.LINE, trial.operator());
        text("remarks", "text-remarks", Form.NOTE, trial.remarks());
        text("keptBecause", "text-reason", Form.NOTE, trial.keptBecause().orElse(""));
        text("struckBecause", "text-reason", Form.NOTE, trial.struckBecause().orElse(""));
    }

    private void issue(FactorIssue issue) {
        text("issuedBy", "text-person", Form.LINE, issue.issuedBy());
        text("approvedBy", "text-person", Form.LINE, issue.approvedBy());
        text("reason", "text-reason", Form.NOTE, issue.reason());
        text("conditions", "text-conditions", Form.LINE, issue.terms().conditions());
        text("checkedBy", "text-person", Form.LINE, issue.terms().checkedBy());
        text("overrideBy", "text-person", Form.LINE, issue.overrideBy());
        text("overrideReason", "text-reason", Form.NOTE, issue.overrideReason());
        for (TakenDoubt taken : issue.grounds().takenOn()) {
            text("overrideBy", "text-person", Form.LINE, taken.by());
            text("overrideReason", "text-reason", Form.NOTE, taken.reason());
        }
    }

    private void print(CardPrint print) {
        text("paper", "text-paper", Form.LINE, print.paper());
        text("destination", "text-destination", Form.PLACE, print.destination());
    }

    private void step(CardStep step) {
        step.holder().ifPresent(holder -> text("holder", "text-holder", Form.LINE, holder.name()));
        text("by", "text-person", Form.LINE, step.by());
        text("remark", "text-remarks", Form.NOTE, step.remark());
    }

    private void study(KeptStudy study) {
        text("id", "text-id", Form.NAME, study.recordId());
        text("title", "text-title", Form.LINE, study.title());
        text("by", "text-person", Form.LINE, study.by());
        text("fileName", "text-file", Form.LINE, study.fileName());
        study.layers().forEach(layer -> text("layers", "text-column", Form.LINE, layer));
        study.readings().stream()
                .flatMap(reading -> reading.names().stream())
                .distinct()
                .forEach(name -> text("readings", "text-reading", Form.LINE, name));
        text("remarks", "text-remarks", Form.NOTE, study.remarks());
    }

    private void measurement(SourceMeasurement measured) {
        text("id", "text-id", Form.LONG_NAME, measured.recordId());
        text("sourceId", "text-source", Form.NAME, measured.sourceId().text());
        text("testedBy", "text-tester", Form.LINE, measured.testedBy());
        text("lot", "text-lot", Form.LINE, measured.lot());
        text("remarks", "text-remarks", Form.NOTE, measured.remarks());
    }

    private void production(Production made) {
        text("id", "text-id", Form.LONG_NAME, made.recordId());
        text("reportedBy", "text-person", Form.LINE, made.reportedBy());
        text("remarks", "text-remarks", Form.NOTE, made.remarks());
    }

    private void group(FactorGroup group) {
        text("id", "text-id", Form.NAME, group.recordId());
        text("groupTitle", "text-title", Form.LINE, group.title());
        text("testedMix", "text-id", Form.NAME, group.testedMix().text());
        group.members().forEach(member -> text("members", "text-id", Form.NAME, member.text()));
        text("reason", "text-reason", Form.NOTE, group.reason());
    }

    private void plan(TestPlan plan) {
        for (int at = 0; at < plan.rows().size(); at++) {
            TestPlan.Row row = plan.rows().get(at);
            String field = "rows." + at + ".";
            text(field + "mixId", "text-mix", Form.NAME, row.mixId().text());
            text(field + "who", "text-tester", Form.LINE, row.who());
            row.meter().ifPresent(meter -> text(field + "meter", "text-meter", Form.NAME, meter.text()));
            text(field + "remark", "text-remarks", Form.NOTE, row.remark());
        }
    }

    private void proposal(FactorProposal proposal) {
        text("draftedBy", "text-person", Form.LINE, proposal.draftedBy());
        text("by", "text-person", Form.LINE, proposal.by());
        text("checkedBy", "text-person", Form.LINE, proposal.terms().checkedBy());
        text("conditions", "text-conditions", Form.LINE, proposal.terms().conditions());
        text("reason", "text-reason", Form.NOTE, proposal.reason());
        text("remark", "text-remarks", Form.NOTE, proposal.remark());
        for (TakenDoubt taken : proposal.grounds().takenOn()) {
            text("overrideBy", "text-person", Form.LINE, taken.by());
            text("overrideReason", "text-reason", Form.NOTE, taken.reason());
        }
    }

    private void decision(ChangeDecision decision) {
        text("id", "text-id", Form.LONG_NAME, decision.recordId());
        text("decidedBy", "text-person", Form.LINE, decision.decidedBy());
        text("reason", "text-reason", Form.NOTE, decision.reason());
    }

    private void photo(SheetPhoto photo) {
        text("id", "text-id", Form.LONGER_NAME, photo.recordId());
        text("trialId", "text-trial", Form.LONG_NAME, photo.trialId().text());
        text("fileName", "text-file", Form.LINE, photo.fileName());
    }

    /** Returns the record's name as a message quotes it. */
    private String named() {
        String id = record.recordId();
        return id.codePointCount(0, id.length()) <= Form.LONG_NAME.longest
                ? id
                : id.substring(0, id.offsetByCodePoints(0, Form.NAME.longest)) + "…";
    }

    private void text(String field, String word, Form form, String text) {
        form.length(text)
                .ifPresent(length -> problems.add(Problem.error(
                        field,
                        "text.too-long",
                        record.kind().word(),
                        named(),
                        new Problem.Word(word),
                        length,
                        form.longest)));
        form.unseen(text)
                .ifPresent(unseen -> problems.add(Problem.error(
                        field,
                        "text.unseen",
                        record.kind().word(),
                        named(),
                        new Problem.Word(word),
                        new Problem.Word(unseen.fault().word()),
                        Glyphs.code(unseen.character()),
                        unseen.place())));
    }
}
