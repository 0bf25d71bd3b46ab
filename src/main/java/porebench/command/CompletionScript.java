package porebench.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import porebench.method.Profile;
import porebench.method.profile.Profiles;

/**
 * Writes the script by which a shell completes a command line, from the commands' own options.
 *
 * <p>Completed are the commands, their options, the words of options that take one of a few, the profiles that come with the
 * program, and names of files where a file or a folder is asked for. Nothing is offered for what only a lab book knows, such as
 * the names of mixes.
 */
final class CompletionScript {
    private static final String PROFILE = "--profile";

    private final CommandLine line;

    CompletionScript(CommandLine line) {
        this.line = line;
    }

    /** Returns the script for a shell, in UTF-8 and with lines that end in a line feed. */
    String in(CompletionCommand.Shell shell) {
        List<String> lines = new ArrayList<>();
        boolean isZsh = shell == CompletionCommand.Shell.ZSH;
        lines.add("# Completion of porebench, written by \"porebench completion " + shell.symbol() + "\".");
        if (isZsh) {
            lines.add("# Read it in ~/.zshrc, after compinit:  source <(porebench completion zsh)");
            lines.add("autoload -U +X bashcompinit && bashcompinit");
        } else {
            lines.add("# Read it in ~/.bashrc:  source <(porebench completion bash)");
        }
        lines.addAll(List.of(
                "_porebench_words() {",
                "    COMPREPLY=($(compgen -W \"$1\" -- \"$cur\"))",
                "}",
                "_porebench_files() {",
                "    local IFS=$'\\n'",
                "    compopt -o filenames 2>/dev/null",
                "    COMPREPLY=($(compgen -f -- \"$cur\"))",
                "}",
                "_porebench_complete() {",
                "    local cur=\"${COMP_WORDS[COMP_CWORD]}\" prev=\"\" command=\"${COMP_WORDS[1]}\"",
                "    COMPREPLY=()",
                "    if [ \"$COMP_CWORD\" -gt 0 ]; then prev=\"${COMP_WORDS[COMP_CWORD-1]}\"; fi",
                "    if [ \"$COMP_CWORD\" -gt 2 ] && [ \"$prev\" = \"=\" ]; then prev=\"${COMP_WORDS[COMP_CWORD-2]}\"; fi",
                "    if [ \"$COMP_CWORD\" -gt 2 ] && [ \"$cur\" = \"=\" ]; then cur=\"\"; fi",
                "    if [ \"$COMP_CWORD\" -eq 1 ]; then",
                "        case \"$cur\" in",
                "            *[./]*) _porebench_files ;;",
                "            *) _porebench_words \"" + first() + "\" ;;",
                "        esac",
                "        return 0",
                "    fi",
                "    case \"$command\" in"));
        line.getSubcommands().forEach((name, command) -> lines.addAll(command(name, command.getCommandSpec())));
        lines.addAll(List.of("    esac", "    return 0", "}", "complete -F _porebench_complete porebench"));
        return String.join("\n", lines) + "\n";
    }

    private String first() {
        Stream<String> options = line.getCommandSpec().options().stream().flatMap(option -> Stream.of(option.names()));
        return Stream.concat(line.getSubcommands().keySet().stream(), options).collect(Collectors.joining(" "));
    }

    private static List<String> command(String name, CommandSpec spec) {
        List<String> lines = new ArrayList<>();
        lines.add("        " + name + ")");
        lines.add("            case \"$prev\" in");
        for (OptionSpec option : spec.options()) {
            if (option.arity().max() > 0) {
                lines.add("                " + String.join("|", option.names()) + ") " + value(name, option)
                        + " return 0 ;;");
            }
        }
        lines.add("            esac");
        lines.add("            case \"$cur\" in");
        lines.add("                -*) _porebench_words \""
                + spec.options().stream()
                        .flatMap(option -> Arrays.stream(option.names()))
                        .collect(Collectors.joining(" "))
                + "\" ;;");
        spec.positionalParameters().stream()
                .findFirst()
                .map(parameter -> value(name, parameter))
                .filter(value -> !value.isEmpty())
                .ifPresent(value -> lines.add("                *) " + value + " ;;"));
        lines.add("            esac");
        lines.add("            ;;");
        return lines;
    }

    /** Returns what completes the value of an option; empty where nothing is known of it. */
    private static String value(String command, ArgSpec arg) {
        Class<?> type = arg.typeInfo().isMultiValue()
                ? arg.auxiliaryTypes()[0]
                : arg.typeInfo().getType();
        if (type == Path.class) {
            return "_porebench_files;";
        }
        if (arg instanceof OptionSpec option && option.longestName().equals(PROFILE)) {
            return words(Profiles.named().stream().map(Profile::id).toList());
        }
        return WordChoices.of(command, type).map(CompletionScript::words).orElse("");
    }

    private static String words(List<String> words) {
        return "_porebench_words \"" + String.join(" ", words) + "\";";
    }
}
