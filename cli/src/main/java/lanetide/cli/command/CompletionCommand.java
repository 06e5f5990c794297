package lanetide.cli.command;

import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Writes the script by which a shell completes commands. */
@Command(
        name = "generate-completion",
        header = "Writes a script by which a shell completes commands",
        description = {
            "A shell that has read the script completes commands, options, the names that an option knows, and files when"
                    + " the Tab key is pressed. For bash, put the first example into ~/.bashrc; for zsh into ~/.zshrc.",
            "",
            "The script goes to standard output."
        },
        optionListHeading = "%nOptions:%n",
        exitCodeList = {HelpText.DONE, HelpText.WRONG_USE},
        footer = {"  source <(lanetide generate-completion)", "  lanetide generate-completion > lanetide-completion.sh"
        })
public final class CompletionCommand extends AutoComplete.GenerateCompletion {}
