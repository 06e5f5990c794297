package lanetide.cli.scenario.entries;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;

/** Reads one bowler, listed or a substitute; no two have the same name. */
public final class BowlerReader {
    private static final String AVERAGE_SOURCE = "by average: O'Keefe, US Bowler, July 2012";

    private final Names names;
    private final FieldReader fields;
    private final Set<String> taken = new HashSet<>();

    /** A reader of bowlers who are called by these names, with what a field says for all. */
    public BowlerReader(Names names, FieldReader fields) {
        this.names = names;
        this.fields = fields;
    }

    /** Takes a name, so that no other bowler may have it. */
    public void take(String name) {
        taken.add(name);
    }

    /** Reads a bowler; empty, with notices, if something of him is wrong. */
    public Optional<Bowler> read(Section section) {
        return read(section, Optional.empty());
    }

    /** The same where an average (pins) tells the level if nothing else does. */
    Optional<Bowler> read(Section section, Optional<Integer> average) {
        Optional<PlayingStyle> style = section.oneOf(BowlerKeys.STYLE, names.styles());
        Optional<Level> level = section.has(BowlerKeys.LEVEL)
                ? section.oneOf(BowlerKeys.LEVEL, names.levels())
                : byAverage(section, average);
        Optional<Coverstock> cover = section.oneOf(BowlerKeys.COVER, names.covers());
        Optional<Coverstock> spareCover = fields.spareCover(section, BowlerKeys.SPARE_COVER);
        Optional<Coverstock> secondCover = section.oneOf(BowlerKeys.SECOND_COVER, names.covers());
        section.find(BowlerKeys.ID)
                .filter(id -> !taken.add(id))
                .flatMap(id -> section.value(BowlerKeys.ID))
                .ifPresent(BowlerReader::twice);
        return section.build(() -> new Bowler(
                section.get(BowlerKeys.ID),
                section.get(BowlerKeys.HAND),
                style.orElseThrow(),
                level.orElseThrow(),
                cover.orElseThrow(),
                spareCover.orElseThrow(),
                section.get(BowlerKeys.TEMPO),
                secondCover,
                0));
    }

    private Optional<Level> byAverage(Section section, Optional<Integer> average) {
        if (average.isEmpty()) {
            section.missing(BowlerKeys.LEVEL);
        }
        Optional<Level> level = average.map(pins -> names.levels().get(Levels.idOfAverage(pins)));
        level.ifPresent(known -> section.assume(BowlerKeys.LEVEL, known.id(), AVERAGE_SOURCE));
        return level;
    }

    private static void twice(Value id) {
        id.refuse(
                NoticeCode.DUPLICATE_NAME,
                ", the name of an earlier entry; each bowler must have a name alone in the event. Add an initial or a"
                        + " number.");
    }
}
