package lanetide.cli.fairness;

import lanetide.cli.report.JsonAnswer;
import lanetide.squads.qualifying.CutChances;
import lanetide.squads.qualifying.CutChances.Found;
import tools.jackson.databind.node.ObjectNode;

/** What a cut does to whom, for programs. */
final class CutJson {
    private CutJson() {}

    static void write(ObjectNode node, CutChances cut) {
        node.put("people", cut.people());
        node.put("places", cut.places());
        node.put("ties", cut.cut().ties().id());
        node.put("handicap", cut.cut().withHandicap());
        node.put("counts", cut.cut().counting().id());
        JsonAnswer.put(node, "goOn", cut.goingOn(), 3);
        found(node.putObject("score"), "pins", cut.score(), 2);
        JsonAnswer.putAll(node, "levels", cut.levels(), (row, level) -> {
            row.put("level", level.level().orElse(null));
            row.put("people", level.people());
            found(row, "chance", level.chance(), 5);
            JsonAnswer.putAll(row, "squads", level.squads(), (place, squad) -> {
                place.put("squad", squad.squad());
                JsonAnswer.put(place, "chance", CutTables.there(level, squad), 5);
                found(place, "more", squad.more(), 5);
                JsonAnswer.put(place, "signShare", squad.more().signShare(), 3);
            });
        });
        JsonAnswer.put(node, "again", cut.again(), (row, again) -> {
            row.put("people", again.people());
            found(row, "chance", again.chance(), 5);
            found(row.putObject("worth"), "more", again.worth(), 5);
        });
    }

    private static void found(ObjectNode node, String field, Found found, int decimals) {
        JsonAnswer.put(node, field, found.value(), decimals);
        JsonAnswer.put(node, "ci90", found.ci90(), decimals);
        JsonAnswer.put(node, "luck90", found.luck90(), decimals);
    }
}
