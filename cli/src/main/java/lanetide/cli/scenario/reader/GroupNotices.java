package lanetide.cli.scenario.reader;

import java.util.List;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Value;
import lanetide.cli.words.English;
import lanetide.squads.model.Group;

/** What there is to say about the size of squads and groups. */
final class GroupNotices {
    /** Most bowlers on a pair: two teams of five (common practice, no source). */
    static final int MAX_ON_A_PAIR = 10;

    private GroupNotices() {}

    static void nobody(SquadDraft squad) {
        squad.section()
                .value()
                .say(
                        NoticeCode.SQUAD_WITHOUT_BOWLERS,
                        squad.called(),
                        "No entry belongs to squad " + squad.called()
                                + "; a squad must have at least one bowler. Add entries with" + " `squad: "
                                + squad.called()
                                + "`, or remove the squad.");
    }

    static void tooMany(Value at, SquadDraft squad, int bowlers, int pairs) {
        at.say(
                NoticeCode.TOO_MANY_BOWLERS,
                String.valueOf(bowlers),
                "Squad " + squad.called() + " has " + bowlers + " bowlers on " + pairs
                        + " pairs; there must be at most "
                        + MAX_ON_A_PAIR + " on a pair, so " + pairs * MAX_ON_A_PAIR
                        + " in all. Use more lanes, or split them into more squads.");
    }

    static void remark(List<Group> groups, int pairs, SquadDraft squad) {
        Value block = squad.section().value();
        if (groups.size() < pairs) {
            block.say(
                    NoticeCode.PAIRS_EMPTY,
                    squad.called(),
                    "Squad " + squad.called() + " has " + English.count(groups.size(), "group") + " on " + pairs
                            + " pairs, so that " + (pairs - groups.size())
                            + (pairs - groups.size() == 1 ? " pair stays empty and its" : " pairs stay empty and their")
                            + " oil stays fresh. Use fewer lanes if that is not meant.");
        }
        int largest = groups.stream().mapToInt(Group::size).max().orElse(0);
        int smallest = groups.stream().mapToInt(Group::size).min().orElse(0);
        if (largest != smallest) {
            block.say(
                    NoticeCode.GROUPS_UNEVEN,
                    squad.called(),
                    "Squad " + squad.called() + " has groups of " + smallest + " to " + largest
                            + " bowlers: larger groups take longer and wear their lanes more. Even them out if you"
                            + " can.");
        }
    }
}
