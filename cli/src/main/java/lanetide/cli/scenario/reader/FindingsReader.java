package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lanetide.cli.scenario.centre.CentreFile;
import lanetide.cli.scenario.centre.PatternMark;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.words.English;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;

/**
 * What measurements tell of the lanes of an event: those of its centre file, and tapes on fresh oil that the scenario
 * names itself.
 */
record FindingsReader(Assumptions assumptions, Optional<CentreFile> fitted) {
    /** The event on lanes of which so much is known; no tape counts twice. */
    Event applied(Event event, Measurements measured) {
        Findings known = fitted.map(file -> file.findings(PatternMark.of(event.pattern())))
                .orElse(Findings.NONE)
                .withLaid(event.onFreshOil(measured.tapes()));
        fitted.ifPresent(this::tell);
        if (!known.laid().isEmpty()) {
            tell(known.laid());
        }
        return event.in(event.centre().with(known));
    }

    private void tell(CentreFile file) {
        int readings = file.days().stream()
                .mapToInt(day -> day.measured().tapes().size()
                        + day.measured().balls().size()
                        + day.measured().scores().size()
                        + day.measured().ends().size())
                .sum();
        assumptions.add(
                CentreKeys.CENTRE.path(CentreKeys.FITTED),
                file.sets().size() + " sets of values that published facts and what was measured here leave",
                readings + " readings of "
                        + file.days().stream().map(CentreFile.Day::event).collect(Collectors.joining(", ")));
    }

    private void tell(List<TapeTaken> laid) {
        Set<Integer> lanes = laid.stream().map(TapeTaken::lane).collect(Collectors.toCollection(TreeSet::new));
        assumptions.add(
                (lanes.size() == 1 ? "lane " : "lanes ")
                        + lanes.stream().map(String::valueOf).collect(Collectors.joining(", ")),
                "the fresh oil is what tapes read of it",
                English.count(laid.size(), "tape"));
    }
}
