package porebench.command.reply;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import porebench.port.OutputFile;
import porebench.port.OutputFolder;

/** What every command that writes files asks: whether one that is there may be replaced. */
public final class WhereTo {
    @Option(names = "--replace")
    private boolean replace;

    public OutputFile file(Path path) {
        return new OutputFile(path, replace);
    }

    public OutputFolder folder(Path path) {
        return new OutputFolder(path, replace);
    }
}
