package lanetide.cli.scenario.reader;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Level;

/** Reads one bowler, listed or a substitute; no two have the same name. */
final class BowlerReader {
    private final Notices notices;
    private final Names names;
    private final FieldReader fields;
    private final Set<String> taken = new HashSet<>();

    BowlerReader(Notices notices, Names names, FieldReader fields) {
        this.notices = notices;
        this.names = names;
        this.fields = fields;
    }

    /** Takes a name, so that no other bowler may have it. */
    void take(String name) {
        taken.add(name);
    }

    Optional<Bowler> read(Section section) {
        int before = notices.errors();
        Optional<Value> idValue = section.require("id");
        String id = idValue.flatMap(Value::text).orElse("");
        Optional<Hand> hand = oneOf(section, "hand", Names.HANDS);
        Optional<PlayingStyle> style = oneOf(section, "style", names.styles());
        Optional<Level> level = oneOf(section, "level", names.levels());
        Optional<Coverstock> cover = oneOf(section, "cover", names.covers());
        Optional<Coverstock> spareCover = fields.spareCover(section);
        Optional<Coverstock> secondCover = fields.secondCover(section);
        double tempo = FieldReader.tempo(section, "tempo", Defaults.TEMPO);
        if (!id.isEmpty() && !taken.add(id)) {
            idValue.ifPresent(BowlerReader::twice);
        }
        return section.build(
                before,
                () -> new Bowler(
                        id,
                        hand.orElseThrow(),
                        style.orElseThrow(),
                        level.orElseThrow(),
                        cover.orElseThrow(),
                        spareCover.orElseThrow(),
                        tempo,
                        secondCover,
                        0));
    }

    private static void twice(Value id) {
        id.refuse(
                NoticeCode.DUPLICATE_NAME,
                ", the name of an earlier entry; each bowler must have a name alone in the event. Add an initial or a"
                        + " number.");
    }

    private static <T> Optional<T> oneOf(Section section, String key, Map<String, T> known) {
        return section.require(key).flatMap(value -> value.oneOf(known, key));
    }
}
