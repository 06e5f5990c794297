package lanetide.cli;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.report.Cautions;
import lanetide.cli.report.Page;
import picocli.CommandLine;

/** The cautions at the end of every help, and line ends that are the same on every system. */
final class CautionsSection {
    private static final String KEY = "cautions";

    private CautionsSection() {}

    static void addTo(CommandLine line) {
        List<String> sections = new ArrayList<>(line.getHelpSectionKeys());
        sections.add(KEY);
        line.setHelpSectionKeys(sections);
        render(line);
        line.getSubcommands().values().forEach(CautionsSection::render);
    }

    private static void render(CommandLine line) {
        line.getHelpSectionMap().put(KEY, help -> {
            Page page = new Page(line.getUsageHelpWidth());
            Cautions.ALL.forEach(page::item);
            return help.createHeading("%nCautions:%n") + page.text();
        });
        line.getHelpSectionMap()
                .replaceAll((key, section) -> help -> section.render(help).replace(System.lineSeparator(), "\n"));
    }
}
