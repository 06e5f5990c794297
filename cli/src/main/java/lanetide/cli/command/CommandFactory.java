package lanetide.cli.command;

import java.io.Reader;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/**
 * Makes the commands, and gives the one that asks what it is answered.
 *
 * @param input what a person types; empty where nobody could answer
 */
public record CommandFactory(Optional<Reader> input) implements IFactory {
    @Override
    public <K> K create(Class<K> type) throws Exception {
        return type == NewCommand.class
                ? type.cast(new NewCommand(input))
                : CommandLine.defaultFactory().create(type);
    }
}
