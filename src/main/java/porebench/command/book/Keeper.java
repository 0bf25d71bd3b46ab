package porebench.command.book;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import porebench.command.reply.Machine;

/** {@code --who}: who keeps records; the user of the machine unless another name is given. */
final class Keeper {
    @Option(names = "--who", paramLabel = "<name>")
    private @Nullable String who;

    String name(Machine here) {
        return who == null || who.isBlank() ? here.user() : who.strip();
    }
}
