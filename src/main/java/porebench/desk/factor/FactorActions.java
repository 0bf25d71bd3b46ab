package porebench.desk.factor;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.CardsOfMix;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.RecallOffer;
import porebench.desk.WithoutPrinter;
import porebench.desk.custody.TextCheckDialog;
import porebench.desk.form.Commands;
import porebench.desk.form.FileNames;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Proposing;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.port.CardHandout;
import porebench.port.FieldHandout;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.record.FactorGroup;
import porebench.record.book.Draft;
import porebench.record.id.MixId;

/** What can be done on the factor page, each once, for its button and its key. */
final class FactorActions {
    final Action issue;
    final Action draft;
    final Action issueForGroup;
    final Action draftForGroup;
    final Action confirm;
    final Action withdraw;
    final Action savePdf;
    final Action print;
    final Action phonePage;
    final Action fieldSheet;
    final Action checkText;
    final Action cardsOut;

    private final GroupOffer group;
    private final RecallOffer recall;
    private final DeskModel desk;
    private final FactorModel model;
    private final Texts texts;
    private final JComponent over;
    private Consumer<List<Problem>> goTo = problems -> {};
    private Paper paper = Paper.A6;
    private boolean chart;

    /**
     * Makes the actions.
     *
     * @param over the page, for dialogs to stand over
     * @param openCards turns the window to cards, by the names of their records
     */
    FactorActions(DeskModel desk, FactorModel model, JComponent over, Consumer<List<String>> openCards) {
        this.desk = desk;
        this.model = model;
        this.texts = model.texts();
        this.over = over;
        this.group = new GroupOffer(desk);
        this.recall = new RecallOffer(desk, () -> over, openCards);
        issue = Commands.of(texts.get("issue.action"), this::issue);
        draft = Commands.of(texts.get("draft.action"), this::issue);
        issueForGroup = Commands.of(texts.get("issue.group"), this::issueForGroup);
        draftForGroup = Commands.of(texts.get("draft.group"), this::draftForGroup);
        confirm = Commands.of(texts.get("confirm.action"), this::confirm);
        withdraw = Commands.of(texts.get("withdraw.action"), this::withdraw);
        savePdf = Commands.of(texts.get("card.save-pdf"), this::savePdf);
        print = Commands.of(texts.get("card.print"), this::print);
        phonePage = Commands.of(
                texts.get("phone.save"), () -> saveForField("phone.save", "phone.file-name", FieldHandout::phone));
        fieldSheet = Commands.of(
                texts.get("field-sheet.save"),
                () -> saveForField(
                        "field-sheet.save",
                        "field-sheet.file-name",
                        (out, wish, file) -> out.sheet(wish.on(desk.units().sheet()), file)));
        cardsOut = Commands.of(
                texts.get("card.cards-out"),
                () -> desk.selected()
                        .ifPresent(mix -> desk.ask(
                                new CardsOfMix(mix),
                                cards -> openCards.accept(cards.stream()
                                        .map(card -> card.print().recordId())
                                        .toList()))));
        checkText = Commands.of(texts.get("card.check"), () -> TextCheckDialog.ask(desk, over));
    }

    Paper paper() {
        return paper;
    }

    void choose(Paper size) {
        paper = size;
    }

    /** Takes whether the card has a chart on its back. */
    void chart(boolean wanted) {
        chart = wanted;
    }

    /** Returns how the card looks where it has a chart on its back; empty where it has none. */
    Optional<CardLook> withChart() {
        return chart
                ? Optional.of(CardLook.of(paper.card().orElseThrow(), PaperLanguage.of(texts.locale()))
                        .withChart(true))
                : Optional.empty();
    }

    /** Enables what can be done now. */
    void refresh() {
        issue.setEnabled(model.canIssue());
        draft.setEnabled(model.canIssue());
        withdraw.setEnabled(model.canWithdraw());
        boolean hasCard = model.card().isPresent() && !model.isNext();
        savePdf.setEnabled(hasCard);
        print.setEnabled(hasCard);
        phonePage.setEnabled(hasCard);
        fieldSheet.setEnabled(hasCard);
        cardsOut.setEnabled(LookedCard.out(desk).isPresent());
    }

    void issue() {
        if (!model.canIssue() || desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        model.issue(offering(this::refuse));
    }

    /** Returns the group for which the selected mix is tested; empty where it is for none. */
    Optional<FactorGroup> group() {
        return group.group();
    }

    /** Says before it is done which mixes get a revision, and which do not, and why. */
    private void issueForGroup() {
        decision()
                .ifPresent(decision -> group.decide(
                        decision,
                        answer -> answer.value()
                                .ifPresentOrElse(
                                        issued -> keepForGroup(
                                                "issue.group",
                                                issued.issues().stream()
                                                        .map(issue -> new Line(issue.mixId(), issue.factorPercent()))
                                                        .toList(),
                                                issued.leftOut(),
                                                issued.issues().stream()
                                                        .map(Draft::of)
                                                        .toList(),
                                                decision),
                                        () -> refuse(answer.problems()))));
    }

    /** Says before it is done for which mixes a draft is kept, and for which none is, and why. */
    private void draftForGroup() {
        decision()
                .ifPresent(decision -> group.draft(
                        decision,
                        answer -> answer.value()
                                .ifPresentOrElse(
                                        taken -> keepForGroup(
                                                "draft.group",
                                                taken.each().stream()
                                                        .map(Proposing.Taken::proposal)
                                                        .map(draft -> new Line(draft.mixId(), draft.factorPercent()))
                                                        .toList(),
                                                taken.leftOut(),
                                                taken.drafts(),
                                                decision),
                                        () -> refuse(answer.problems()))));
    }

    /** What one mix gets. */
    private record Line(MixId mix, BigDecimal factorPercent) {}

    /** Returns what is decided for the group for which the mix is tested, once a person stands for it. */
    private Optional<Issuing.Decision> decision() {
        if (group.group().isEmpty() || desk.tools().asker().person(over).isEmpty()) {
            return Optional.empty();
        }
        Optional<Issuing.Decision> decision = model.deciding();
        if (decision.isEmpty()) {
            report(texts.get(model.proposal().isDrafted() ? "draft.refused" : "issue.refused"), model.problems());
        }
        return decision;
    }

    private void keepForGroup(
            String action,
            List<Line> revisions,
            List<GroupIssuing.LeftOut> left,
            List<Draft> drafts,
            Issuing.Decision decision) {
        Set<MixId> mixes = revisions.stream().map(Line::mix).collect(Collectors.toSet());
        recall.withOut(mixes, out -> {
            String question = said(action, revisions, left);
            String called =
                    out.isEmpty() ? question : question + "\n" + texts.get("cards.called-back", recall.names(out));
            if (desk.tools().asker().confirm(over, texts.get(action), called, texts.get(action + ".act"))) {
                group.keep(drafts, decision.reason(), offering(mixes::contains, this::refuse));
            }
        });
    }

    private void refuse(List<Problem> refused) {
        report(texts.get(model.proposal().isDrafted() ? "draft.refused" : "issue.refused"), refused);
        goTo.accept(refused);
    }

    private String said(String action, List<Line> revisions, List<GroupIssuing.LeftOut> leftOut) {
        String mixes = revisions.stream().map(line -> line.mix().text()).collect(Collectors.joining(", "));
        String left = leftOut.stream()
                .flatMap(one -> one.why().stream())
                .map(desk.tools().problemText()::say)
                .collect(Collectors.joining("\n"));
        String question = action + ".question";
        return texts.get(
                left.isEmpty() ? question : question + ".left",
                desk.tools().numbers().show(revisions.get(0).factorPercent()),
                mixes,
                left);
    }
    /** Hears why nothing was issued, once the person has read it. */
    void onRefused(Consumer<List<Problem>> heard) {
        goTo = heard;
    }

    private void confirm() {
        if (model.confirmable().isEmpty() || desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        model.confirm(refused -> report(texts.get("confirm.refused"), refused));
    }

    private void withdraw() {
        if (desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        desk.selected().ifPresent(mix -> recall.withOut(mix, this::withdraw));
    }

    /** Asks why, naming who holds the cards that will have to come back. */
    private void withdraw(List<HeldCard> out) {
        String question = texts.get("withdraw.question");
        desk.tools()
                .asker()
                .reason(
                        over,
                        texts.get("withdraw.action"),
                        out.isEmpty() ? question : question + " " + texts.get("cards.called-back", recall.names(out)),
                        texts.get("withdraw.act"))
                .ifPresent(reason ->
                        model.withdraw(reason, offering(refused -> report(texts.get("withdraw.refused"), refused))));
    }

    /** Returns an outcome after which the list of cards to call back is offered, where the mix has any by then. */
    private Outcome offering(Outcome outcome) {
        Optional<MixId> mix = desk.selected();
        return offering(one -> mix.filter(one::equals).isPresent(), outcome);
    }

    private Outcome offering(Predicate<MixId> mixes, Outcome outcome) {
        return Outcome.of(
                refused -> {
                    outcome.take(refused);
                    if (refused.isEmpty()) {
                        recall.afterKeeping(mixes);
                    }
                },
                outcome::fail);
    }

    private void savePdf() {
        desk.renew(() -> wish().ifPresent(this::savePdf));
    }

    private void savePdf(CardHandout.Wish wish) {
        String suggested = fileName("card.file-name", wish);
        desk.tools()
                .asker()
                .fileToWrite(over, texts.get("card.save-pdf"), suggested)
                .ifPresent(file -> {
                    Optional<CardLook> look = withChart();
                    let(
                            texts.get("card.saving"),
                            () -> Optional.of(
                                    look.isPresent()
                                            ? handout().toFile(wish, look.get(), file)
                                            : handout().toFile(wish, file)),
                            () -> {});
                });
    }

    private void print() {
        desk.renew(() -> wish().ifPresent(wish -> {
            Optional<CardLook> look = withChart();
            let(
                    texts.get("card.printing"),
                    () -> look.isPresent()
                            ? handout().toPrinter(wish, look.get())
                            : handout().toPrinter(wish),
                    () -> savePdf(wish));
        }));
    }

    /** How something for the field leaves into a file. */
    private interface Leaving {
        Answer<CardHandout.Handed> into(FieldHandout out, CardHandout.Wish wish, OutputFile file);
    }

    /** Saves what a crew takes to the field beside a card, by the card's own gate. */
    private void saveForField(String titleKey, String nameKey, Leaving leaving) {
        desk.renew(() -> wish().ifPresent(wish -> desk.tools()
                .asker()
                .fileToWrite(over, texts.get(titleKey), fileName(nameKey, wish))
                .ifPresent(file -> let(
                        texts.get("card.saving"),
                        () -> Optional.of(leaving.into(
                                new FieldHandout(desk.book(), desk.tools().press(), texts.locale()), wish, file)),
                        () -> {}))));
    }

    private String fileName(String key, CardHandout.Wish wish) {
        String name = texts.get(
                key,
                FileNames.part(wish.mixId().text()),
                Integer.toString(wish.revision().orElseThrow()));
        return FileNames.dated(name, desk.tools().today());
    }

    private CardHandout handout() {
        return new CardHandout(desk.book(), desk.tools().press(), texts.locale());
    }

    /** Lets a card leave, away from the window; says what came of it where it did not simply leave. */
    private void let(String doing, Callable<Optional<Answer<CardHandout.Handed>>> work, Runnable withoutPrinter) {
        desk.tools()
                .tasks()
                .run(
                        doing,
                        work,
                        answer -> {
                            desk.refresh();
                            answer.ifPresent(known -> {
                                report(
                                        texts.get(known.value().isPresent() ? "card.marked-title" : "card.refused"),
                                        known.problems());
                                known.value().map(CardHandout.Handed::prints).ifPresent(recall::afterPrinting);
                            });
                        },
                        failure -> {
                            desk.refresh();
                            WithoutPrinter.tell(desk.tools(), over, doing, failure, withoutPrinter);
                        });
    }

    /**
     * Returns what is wanted of the card looked at, once a person stands for it. One that may not leave as it is leaves only as
     * a copy with its state across it, and only when they ask for that.
     */
    private Optional<CardHandout.Wish> wish() {
        if (model.card().isEmpty()
                || model.isNext()
                || desk.tools().asker().person(over).isEmpty()) {
            return Optional.empty();
        }
        boolean isCurrent = model.isCardCurrent();
        boolean goesOn = isCurrent
                || desk.tools()
                        .asker()
                        .confirm(
                                over,
                                texts.get("card.not-current-title"),
                                texts.get("card.not-current-question"),
                                texts.get("card.not-current-action"));
        return goesOn ? Optional.of(model.wish(paper, !isCurrent, texts.get("card.print-reason"))) : Optional.empty();
    }

    private void report(String title, List<Problem> problems) {
        if (!problems.isEmpty()) {
            desk.tools().asker().problems(over, title, problems);
        }
    }
}
