package lanetide.cli.sheets;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.ProductId;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.Locale;
import lanetide.cli.report.PatternWords;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.model.Event;
import lanetide.squads.study.CutStatistics;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;

/** Squads and oilings as a calendar (RFC 5545), in the local time of wherever it is opened. */
final class EventCalendar {
    private static final DateTimeFormatter FORM = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

    private final Scenario scenario;
    private final LocalDate firstDay;
    private final ICalendar calendar = new ICalendar();

    private EventCalendar(Scenario scenario, LocalDate firstDay) {
        this.scenario = scenario;
        this.firstDay = firstDay;
    }

    static String write(Scenario scenario, StudyResult study, LocalDate firstDay) {
        return new EventCalendar(scenario, firstDay).write(study);
    }

    private String write(StudyResult study) {
        Event event = scenario.event();
        calendar.setVersion(ICalVersion.V2_0);
        calendar.setProductId(new ProductId("-//Lanetide//EN"));
        for (OilingPlan.Oiling oiling : OilingPlan.oilings(FinalsSheet.withOiling(scenario.withFinals()))) {
            add(
                    "oil-" + oiling.squad().id(),
                    event.name() + ": lanes "
                            + PatternWords.conditioning(oiling.squad().conditioning()) + " before "
                            + FinalsSheet.called(oiling.squad()),
                    oiling.beginMs(),
                    oiling.doneMs());
        }
        for (SquadStatistics squad : study.squads()) {
            long start = study.first().squads().stream()
                    .filter(result -> result.squad().equals(squad.squad()))
                    .findFirst()
                    .orElseThrow()
                    .startMs();
            add("squad-" + squad.squad(), event.name() + ": squad " + squad.squad(), start, squad.latestEndMs());
        }
        scenario.policy()
                .finals()
                .ifPresent(finals -> study.cut()
                        .flatMap(CutStatistics::end)
                        .ifPresent(end -> add("finals", event.name() + ": finals", finals.startMs(), end.highMs())));
        return Biweekly.write(calendar).go();
    }

    private void add(String id, String summary, long startMs, long endMs) {
        VEvent entry = new VEvent();
        entry.setUid(scenario.sha256().substring(0, 16) + "-" + id.replaceAll("[^A-Za-z0-9-]", "_") + "@lanetide");
        // The same scenario gives the same calendar, so it is stamped with its own first day.
        entry.setDateTimeStamp(Date.from(firstDay.atStartOfDay().toInstant(ZoneOffset.UTC)));
        entry.setSummary(summary);
        // As they stand: the library would send them through the zone of the machine that writes them.
        entry.addExperimentalProperty("DTSTART", local(startMs));
        entry.addExperimentalProperty("DTEND", local(endMs));
        calendar.addEvent(entry);
    }

    /** A time without zone (RFC 5545, 3.3.5, form 1), to the nearest minute. */
    private String local(long timeMs) {
        return FORM.format(firstDay.atStartOfDay().plusMinutes(Math.floorDiv(timeMs + 30_000, 60_000)));
    }
}
