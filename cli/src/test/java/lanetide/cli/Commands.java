package lanetide.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** All commands of the program as the library models them. */
final class Commands {
    private Commands() {}

    /** The program itself, then each of its commands. */
    static List<CommandSpec> all() {
        CommandLine program = Lanetide.commands(Optional.empty());
        List<CommandSpec> commands = new ArrayList<>(List.of(program.getCommandSpec()));
        program.getSubcommands().values().forEach(command -> commands.add(command.getCommandSpec()));
        return commands;
    }

    /** The examples in a command's help, without what they are indented by. */
    static List<String> examples(CommandSpec command) {
        return Arrays.stream(command.usageMessage().footer()).map(String::strip).toList();
    }
}
