package lanetide.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Centre;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.Group;

/** Finds every squad's bowlers, from its own field, the event's field or the entry list, and checks that they fit. */
final class SquadFiller {
    /** Most bowlers on a pair: two teams of five (common practice, no source). */
    static final int MOST_ON_A_PAIR = 10;

    private final Notices notices;
    private final FieldReader fields;
    private final EntriesReader entries;

    SquadFiller(Notices notices, FieldReader fields, EntriesReader entries) {
        this.notices = notices;
        this.fields = fields;
        this.entries = entries;
    }

    /** The groups of each squad, in the order of the squads; empty where they are wrong. */
    List<Optional<List<Group>>> fill(
            Section scenario, List<SquadDraft> squads, Optional<Centre> centre, RandomStreams streams) {
        int pairs = centre.map(known -> known.pairs().size()).orElse(0);
        Optional<Section> field = eventField(scenario, squads);
        scenario.get("entries")
                .ifPresent(list ->
                        entries.read(list, squads.stream().map(SquadDraft::id).toList(), pairs));
        List<Optional<List<Group>>> groups = new ArrayList<>();
        Optional<FieldMix> shared = field.flatMap(section -> fields.read(section, OptionalInt.empty()));
        for (SquadDraft squad : squads) {
            groups.add(
                    pairs == 0 || squad.id().isEmpty()
                            ? Optional.empty()
                            : groups(squad, shared, scenario, pairs, streams));
        }
        return groups;
    }

    private Optional<Section> eventField(Section scenario, List<SquadDraft> squads) {
        boolean everyOwn = !squads.isEmpty() && squads.stream().allMatch(SquadDraft::hasOwnField);
        if (scenario.has("field") && scenario.has("entries")) {
            scenario.get("entries")
                    .ifPresent(
                            list -> list.say(
                                    NoticeCode.CONFLICTING_KEYS,
                                    "",
                                    "Both `field` and `entries` are given; the bowlers must come from one of the two. Remove the other."));
        } else if (!scenario.has("field") && !scenario.has("entries") && !everyOwn) {
            scenario.missing("field");
        }
        return scenario.get("field").flatMap(value -> value.section(Block.FIELD));
    }

    private Optional<List<Group>> groups(
            SquadDraft squad, Optional<FieldMix> shared, Section scenario, int pairs, RandomStreams streams) {
        if (squad.hasOwnField()) {
            return own(squad).flatMap(mix -> drawn(squad, mix, squad.section().get("field"), pairs, streams));
        }
        if (scenario.has("field")) {
            return shared.map(mix -> sized(mix, squad.bowlers()))
                    .flatMap(mix -> drawn(squad, mix, scenario.get("field"), pairs, streams));
        }
        return entries(squad, scenario, pairs);
    }

    private Optional<FieldMix> own(SquadDraft squad) {
        return squad.section()
                .get("field")
                .flatMap(value -> value.section(Block.FIELD))
                .flatMap(section -> fields.read(section, squad.bowlers()));
    }

    private static FieldMix sized(FieldMix mix, OptionalInt bowlers) {
        return bowlers.isEmpty()
                ? mix
                : new FieldMix(
                        bowlers.getAsInt(), mix.hands(), mix.styles(), mix.levels(), mix.covers(), mix.spareCover());
    }

    private Optional<List<Group>> drawn(
            SquadDraft squad, FieldMix mix, Optional<Value> field, int pairs, RandomStreams streams) {
        if (mix.bowlers() > pairs * MOST_ON_A_PAIR) {
            squad.section()
                    .get("bowlers")
                    .or(() -> field.flatMap(value -> value.child("perSquad")))
                    .ifPresent(value -> tooMany(value, squad, mix.bowlers(), pairs));
            return Optional.empty();
        }
        List<Group> groups = mix.groups(squad.id(), pairs, streams);
        remark(groups, pairs, squad);
        return Optional.of(groups);
    }

    private Optional<List<Group>> entries(SquadDraft squad, Section scenario, int pairs) {
        if (!scenario.has("entries") || entries.isFaulty()) {
            return Optional.empty();
        }
        if (!entries.hasBowlersOf(squad.id())) {
            nobody(squad);
            return Optional.empty();
        }
        Optional<List<Group>> groups = entries.groups(squad.id(), pairs);
        groups.ifPresent(known -> {
            int fullest = known.stream()
                    .mapToInt(group -> group.bowlers().size())
                    .max()
                    .orElse(0);
            if (fullest > MOST_ON_A_PAIR) {
                int bowlers =
                        known.stream().mapToInt(group -> group.bowlers().size()).sum();
                scenario.get("entries").ifPresent(value -> tooMany(value, squad, bowlers, pairs));
            } else {
                remark(known, pairs, squad);
            }
        });
        return groups;
    }

    private void nobody(SquadDraft squad) {
        notices.add(
                NoticeCode.SQUAD_WITHOUT_BOWLERS,
                squad.section().place(),
                squad.section().path(),
                squad.id(),
                "No entry belongs to squad " + squad.id() + "; a squad must have at least one bowler. Add entries with"
                        + " `squad: " + squad.id() + "`, or remove the squad.");
    }

    private static void tooMany(Value at, SquadDraft squad, int bowlers, int pairs) {
        at.say(
                NoticeCode.TOO_MANY_BOWLERS,
                String.valueOf(bowlers),
                "Squad " + squad.id() + " has " + bowlers + " bowlers on " + pairs + " pairs; there must be at most "
                        + MOST_ON_A_PAIR + " on a pair, so " + pairs * MOST_ON_A_PAIR
                        + " in all. Use more lanes, or split them into more squads.");
    }

    private void remark(List<Group> groups, int pairs, SquadDraft squad) {
        Section section = squad.section();
        if (groups.size() < pairs) {
            notices.add(
                    NoticeCode.PAIRS_EMPTY,
                    section.place(),
                    section.path(),
                    squad.id(),
                    "Squad " + squad.id() + " has " + groups.size() + " groups on " + pairs + " pairs, so that "
                            + (pairs - groups.size())
                            + " pairs stay empty and their oil stays fresh. Use fewer lanes if that is not meant.");
        }
        int largest =
                groups.stream().mapToInt(group -> group.bowlers().size()).max().orElse(0);
        int smallest =
                groups.stream().mapToInt(group -> group.bowlers().size()).min().orElse(0);
        if (largest != smallest) {
            notices.add(
                    NoticeCode.GROUPS_UNEVEN,
                    section.place(),
                    section.path(),
                    squad.id(),
                    "Squad " + squad.id() + " has groups of " + smallest + " to " + largest
                            + " bowlers: larger groups take longer and wear their lanes more. Even them out if you can.");
        }
    }
}
