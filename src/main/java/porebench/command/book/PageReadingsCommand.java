package porebench.command.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.WhereTo;
import porebench.method.Answer;
import porebench.method.Problem;

/** {@code page-readings}: the readings in photos of the codes that a phone page shows, as one CSV file to import. */
@Command(name = "page-readings")
public final class PageReadingsCommand extends OneCommand {
    /** The heading with which each code of a phone page begins: the columns of {@code field-readings.csv}. */
    public static final String HEADING =
            "reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,temperature_c,remarks";

    private static final String LINE = "\r\n";

    @Option(names = "--picture", required = true, paramLabel = "<file>", arity = "1..*")
    private List<Path> pictures = new ArrayList<>();

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public PageReadingsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    /** Every picture must show readings; where one does not, nothing is written, so that none is missed unseen. */
    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        Set<String> rows = new LinkedHashSet<>();
        int codes = 0;
        for (Path picture : pictures) {
            Answer<List<String>> read = ports().press().get().codes(picture);
            problems.addAll(read.problems());
            List<List<String>> sheets = read.value().orElse(List.of()).stream()
                    .map(text -> text.lines().toList())
                    .filter(lines -> lines.get(0).equals(HEADING))
                    .toList();
            if (read.value().isPresent() && sheets.isEmpty()) {
                problems.add(Problem.error("picture", "page.no-readings", picture.toString()));
            }
            codes += sheets.size();
            sheets.forEach(lines -> rows.addAll(lines.subList(1, lines.size())));
        }
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        String csv = HEADING + LINE + String.join(LINE, rows) + LINE;
        try {
            whereTo.file(out).write(stream -> stream.write(csv.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return CommandOutcome.done(report(codes, rows.size()), problems);
    }

    private Report report(int codes, int readings) {
        String path = whereTo.file(out).path().toString();
        return this.<Optional<String>>laidOut()
                .text("path", any -> path)
                .whole("codes", any -> codes)
                .whole("readings", any -> readings)
                .line(any -> words().get("page.readings", Integer.toString(readings), Integer.toString(codes), path))
                .report(Optional.empty());
    }
}
