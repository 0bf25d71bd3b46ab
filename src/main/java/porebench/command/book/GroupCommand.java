package porebench.command.book;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Ports;
import porebench.command.reply.Reply;
import porebench.command.reply.ReportLayout;
import porebench.evidence.EvidenceReader;
import porebench.evidence.Moments;
import porebench.evidence.group.GroupLook;
import porebench.evidence.group.LikeMix;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.group.Likeness;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/** {@code group}: how the members of a group stand, or which mixes are like one and might be in a group with it. */
@Command(name = "group")
public final class GroupCommand extends BookCommand {
    @ArgGroup(multiplicity = "1")
    private Of of = new Of();

    /** What is asked about. */
    static final class Of {
        @Option(names = "--group-id", required = true, paramLabel = "<id>")
        private @Nullable GroupId group;

        @ArgGroup(exclusive = false)
        private @Nullable Near near;
    }

    /** The mix to which others may be like. */
    static final class Near {
        @Option(names = "--mix-id", required = true, paramLabel = "<id>")
        private MixId mixId;

        @Option(names = "--within", required = true, paramLabel = "<number>")
        private BigDecimal within;
    }

    public GroupCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            return marked(book, of.near == null ? look(book, String.valueOf(of.group)) : like(book, of.near));
        }
    }

    private CommandOutcome look(LabBook book, String id) {
        Optional<Version<FactorGroup>> group = book.latest(FactorGroup.class, id);
        return group.isEmpty()
                ? CommandOutcome.refused(Problem.error("groupId", "book.not-there", RecordKind.FACTOR_GROUP.word(), id))
                : CommandOutcome.done(
                        looked().report(GroupLook.of(
                                EvidenceReader.asking(book)::readEach, group.get(), Moments.endOf(here().today()))),
                        List.of());
    }

    private CommandOutcome like(LabBook book, Near near) {
        if (!Limit.LIKENESS.holds(near.within)) {
            return CommandOutcome.refused(Problem.error(
                    "within",
                    "group.tolerance-impossible",
                    near.within,
                    Limit.LIKENESS.lowInclusive(),
                    Limit.LIKENESS.highInclusive()));
        }
        Optional<Version<MixDesign>> mix = book.latest(MixDesign.class, near.mixId.text());
        return mix.isEmpty()
                ? CommandOutcome.refused(
                        Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), near.mixId.text()))
                : CommandOutcome.done(
                        found(near).report(LikeMix.of(book, mix.get().value(), near.within)), List.of());
    }

    private ReportLayout<GroupLook> looked() {
        ReportLayout<GroupLook.Member> members = this.<GroupLook.Member>laidOut()
                .text("mixId", "register.mix", member -> member.mixId().text())
                .field((json, member) -> json.text("title", member.title()))
                .flag("tested", GroupLook.Member::isTested)
                .field((json, member) -> json.text("state", member.state().symbol()))
                .cell(
                        "register.state",
                        member -> words().get("state." + member.state().symbol().replace(' ', '-')))
                .field((json, member) ->
                        json.number("factorPercent", member.inForce().map(FactorIssue::factorPercent)))
                .cell(
                        "register.factor",
                        member -> member.inForce()
                                .map(FactorIssue::factorPercent)
                                .map(shown()::exact)
                                .orElse(NumberText.NONE))
                .field((json, member) -> json.whole("revision", member.inForce().map(FactorIssue::revision)))
                .cell(
                        "register.revision",
                        member -> member.inForce()
                                .map(issue -> Integer.toString(issue.revision()))
                                .orElse(NumberText.NONE))
                .field((json, member) -> json.text(
                        "draft", member.draft().map(draft -> draft.step().symbol())));
        far(members, GroupLook.Member::likeness)
                .field((json, member) ->
                        Reply.problems(json, "unlike", member.likeness().why(), problemText()))
                .field((json, member) -> Reply.problems(json, "untrue", member.why(), problemText()));
        return this.<GroupLook>laidOut()
                .text("groupId", look -> look.group().value().id().text())
                .whole("version", look -> look.group().number())
                .text("title", look -> look.group().value().title())
                .text("testedMix", look -> look.group().value().testedMix().text())
                .field((json, look) -> json.number(
                        "tolerance", Optional.of(look.group().value().tolerancePercent())))
                .text("reason", look -> look.group().value().reason())
                .field((json, look) -> json.text("determinationId", look.open().map(id -> id.text())))
                .line(look -> words().get(
                                "group.said",
                                look.group().value().id().text(),
                                Integer.toString(look.group().number()),
                                look.group().value().testedMix().text(),
                                shown().exact(look.group().value().tolerancePercent())))
                .gap()
                .field((json, look) -> json.list("members", look.members(), members::json))
                .alone((page, look) -> {
                    members.table(page, look.members());
                    page.gap();
                    look.members()
                            .forEach(member -> member.matters(look.group().value()).stream()
                                    .map(problemText()::say)
                                    .forEach(said -> page.line(words().get(
                                                    "register.missing-line",
                                                    member.mixId().text(),
                                                    said))));
                });
    }

    private ReportLayout<List<LikeMix>> found(Near near) {
        ReportLayout<LikeMix> mixes = this.<LikeMix>laidOut()
                .text("mixId", "register.mix", mix -> mix.mixId().text())
                .text("title", "register.mix-title", LikeMix::title);
        far(mixes, LikeMix::likeness)
                .field((json, mix) -> json.text("groupId", mix.group().map(GroupId::text)))
                .cell("group.in-group", mix -> mix.group().map(GroupId::text).orElse(NumberText.NONE));
        return this.<List<LikeMix>>laidOut()
                .text("mixId", any -> near.mixId.text())
                .field((json, any) -> json.number("within", Optional.of(near.within)))
                .line(all -> words().get(
                                all.isEmpty() ? "group.none-like" : "group.like",
                                near.mixId.text(),
                                shown().exact(near.within),
                                Integer.toString(all.size())))
                .field((json, all) -> json.list("mixes", all, mixes::json))
                .alone((page, all) -> {
                    if (!all.isEmpty()) {
                        page.gap();
                        mixes.table(page, all);
                    }
                });
    }

    /** Adds how far a mix is from the tested one; nothing for what cannot be compared. */
    private <T> ReportLayout<T> far(ReportLayout<T> layout, Function<T, Likeness> likeness) {
        return layout.number(
                        "apartPoints",
                        "group.points",
                        one -> likeness.apply(one).apartPoints(),
                        shown().fixed(1))
                .number(
                        "apartPercent",
                        "group.percent",
                        one -> likeness.apply(one).apartPercent(),
                        shown().fixed(1));
    }
}
