package porebench.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.quantity.Symbolic;

/** {@code completion}: what a shell is given so that it completes commands, their options and the words these may have. */
@Command(name = "completion")
final class CompletionCommand extends OneCommand {
    /** The shells that a script is written for. */
    enum Shell implements Symbolic {
        BASH("bash"),
        ZSH("zsh");

        private final String symbol;

        Shell(String symbol) {
            this.symbol = symbol;
        }

        @Override
        public String symbol() {
            return symbol;
        }
    }

    @Parameters(paramLabel = "<shell>", descriptionKey = "shell")
    private Shell shell = Shell.BASH;

    CompletionCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        String script = new CompletionScript(new PorebenchCommands(here(), ports()).commandLine()).in(shell);
        return CommandOutcome.done(
                new Report() {
                    @Override
                    public void json(JsonFields json) {
                        json.text("shell", shell.symbol());
                        json.text("script", script);
                    }

                    @Override
                    public void text(TextPage page) {
                        script.lines().forEach(page::line);
                    }
                },
                List.of());
    }
}
