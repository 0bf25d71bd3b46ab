package porebench.command;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import porebench.record.port.OutputFile;
import porebench.record.port.OutputFolder;

/** What every command that writes files asks: whether one that is there may be replaced. */
final class WhereTo {
    @Option(names = "--replace")
    private boolean replace;

    OutputFile file(Path path) {
        return new OutputFile(path, replace);
    }

    OutputFolder folder(Path path) {
        return new OutputFolder(path, replace);
    }
}
