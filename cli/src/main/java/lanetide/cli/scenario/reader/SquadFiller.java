package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.entries.EntriesReader;
import lanetide.cli.scenario.entries.FieldReader;
import lanetide.cli.scenario.entries.NamedFields;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.Group;

/** Finds every squad's bowlers, from its own field, the event's field or the entry list, and checks that they fit. */
record SquadFiller(FieldReader fields, NamedFields named, EntriesReader entries) {
    /**
     * Bowlers of a squad.
     *
     * @param groups its groups
     * @param mix the shares they were drawn by; empty if they are listed
     */
    record Filled(List<Group> groups, Optional<FieldMix> mix) {}

    /**
     * The bowlers of each squad, in the order of the squads; empty where they are wrong or no pair is known to be in
     * use.
     */
    List<Optional<Filled>> fill(Section scenario, List<SquadDraft> squads, RandomStreams streams) {
        Optional<Section> field = eventField(scenario, squads);
        if (scenario.has(EventKeys.ENTRIES)) {
            entries.read(scenario, rooms(squads), mostPairs(squads));
        }
        List<Optional<Filled>> groups = new ArrayList<>();
        Optional<FieldMix> shared = field.flatMap(fields::read);
        for (SquadDraft squad : squads) {
            groups.add(
                    squad.pairs() == 0 || squad.id().isEmpty()
                            ? Optional.empty()
                            : filled(squad, shared, scenario, squad.pairs(), streams));
        }
        return groups;
    }

    /** How many bowlers a draw may put into each squad. */
    private static List<EntriesReader.Room> rooms(List<SquadDraft> squads) {
        return squads.stream()
                .map(squad -> new EntriesReader.Room(
                        squad.called(),
                        squad.section()
                                .find(EventKeys.SQUAD_PLACES)
                                .orElse(squad.pairs() * GroupNotices.MAX_ON_A_PAIR)))
                .toList();
    }

    private static int mostPairs(List<SquadDraft> squads) {
        return squads.stream().mapToInt(SquadDraft::pairs).max().orElse(0);
    }

    /** The field that squads are drawn from; beside entries a field has shares for what these do not say. */
    private static Optional<Section> eventField(Section scenario, List<SquadDraft> squads) {
        if (scenario.has(EventKeys.ENTRIES)) {
            scenario.value(EventKeys.FIELD)
                    .flatMap(field -> field.child(BowlerKeys.PER_SQUAD))
                    .ifPresent(bowlers -> refuseTwo(scenario));
            return Optional.empty();
        }
        boolean everyOwn = !squads.isEmpty() && squads.stream().allMatch(SquadDraft::hasOwnField);
        if (!scenario.has(EventKeys.FIELD) && !everyOwn) {
            scenario.missing(EventKeys.FIELD);
        }
        return scenario.block(EventKeys.FIELD);
    }

    private static void refuseTwo(Section scenario) {
        scenario.value(EventKeys.ENTRIES)
                .ifPresent(list -> list.say(
                        NoticeCode.CONFLICTING_KEYS,
                        "",
                        "Both `entries` and a `field` with `perSquad` are given; the bowlers must come from one of the two."
                                + " Remove the other; or remove `perSquad` alone, and what the entries leave out is drawn by"
                                + " the shares of the field."));
    }

    private Optional<Filled> filled(
            SquadDraft squad, Optional<FieldMix> shared, Section scenario, int pairs, RandomStreams streams) {
        refuseConflicts(squad, scenario);
        if (squad.hasOwnField()) {
            return own(squad)
                    .flatMap(mix -> drawn(squad, mix, squad.section().value(EventKeys.SQUAD_FIELD), pairs, streams));
        }
        if (!scenario.has(EventKeys.ENTRIES) && scenario.has(EventKeys.FIELD)) {
            return shared.map(mix -> sized(mix, squad.section().find(EventKeys.SQUAD_BOWLERS)))
                    .flatMap(mix -> drawn(squad, mix, scenario.value(EventKeys.FIELD), pairs, streams));
        }
        return entries(squad, scenario, pairs).map(groups -> new Filled(groups, Optional.empty()));
    }

    /** Nothing that a squad says of its bowlers may go unheard. */
    private void refuseConflicts(SquadDraft squad, Section scenario) {
        if (!entries.drawsSquads()) {
            squad.section()
                    .value(EventKeys.SQUAD_PLACES)
                    .ifPresent(value -> value.refuse(
                            NoticeCode.CONFLICTING_KEYS,
                            ", but nobody is drawn into squads; places are for such a draw. Remove `places`, or write `squads:"
                                    + " drawn` under `draw` beside entries."));
        }
        Optional<Value> bowlers = squad.section().value(EventKeys.SQUAD_BOWLERS);
        if (squad.hasOwnField() && squad.fieldName().isEmpty()) {
            bowlers.ifPresent(
                    value -> value.refuse(
                            NoticeCode.CONFLICTING_KEYS,
                            ", but the squad's own `field` has its number in `perSquad`; only one may be given. Remove `bowlers`."));
        } else if (scenario.has(EventKeys.ENTRIES)) {
            bowlers.ifPresent(value -> value.refuse(
                    NoticeCode.CONFLICTING_KEYS,
                    ", but the bowlers are listed under `entries`; only one may be given. Remove `bowlers`."));
        }
        if (squad.hasOwnField() && entries.hasBowlersOf(squad.called())) {
            squad.section()
                    .value(EventKeys.SQUAD_FIELD)
                    .ifPresent(value -> value.say(
                            NoticeCode.CONFLICTING_KEYS,
                            "",
                            "Squad " + squad.called()
                                    + " has a `field` of its own, but some `entries` belong to it too; its"
                                    + " bowlers must come from one of the two. Remove the other."));
        }
    }

    private Optional<FieldMix> own(SquadDraft squad) {
        Section section = squad.section();
        return squad.fieldName().isPresent()
                ? section.value(EventKeys.SQUAD_FIELD)
                        .flatMap(named::of)
                        .map(mix -> sized(mix, section.find(EventKeys.SQUAD_BOWLERS)))
                : section.block(EventKeys.SQUAD_FIELD).flatMap(fields::read);
    }

    private static FieldMix sized(FieldMix mix, Optional<Integer> bowlers) {
        return bowlers.map(mix::of).orElse(mix);
    }

    private Optional<Filled> drawn(
            SquadDraft squad, FieldMix mix, Optional<Value> field, int pairs, RandomStreams streams) {
        if (mix.bowlers() > pairs * GroupNotices.MAX_ON_A_PAIR) {
            squad.section()
                    .value(EventKeys.SQUAD_BOWLERS)
                    .or(() ->
                            field.map(value -> value.child(BowlerKeys.PER_SQUAD).orElse(value)))
                    .ifPresent(value -> GroupNotices.tooMany(value, squad, mix.bowlers(), pairs));
            return Optional.empty();
        }
        List<Group> groups = mix.groups(squad.called(), pairs, streams);
        GroupNotices.remark(groups, pairs, squad);
        return Optional.of(new Filled(groups, Optional.of(mix)));
    }

    private Optional<List<Group>> entries(SquadDraft squad, Section scenario, int pairs) {
        if (!scenario.has(EventKeys.ENTRIES) || entries.isFaulty()) {
            return Optional.empty();
        }
        if (!entries.hasBowlersOf(squad.called())) {
            GroupNotices.nobody(squad);
            return Optional.empty();
        }
        Optional<List<Group>> groups = entries.groups(squad.called(), pairs);
        groups.ifPresent(known -> {
            int fullest = known.stream().mapToInt(Group::size).max().orElse(0);
            if (fullest > GroupNotices.MAX_ON_A_PAIR) {
                int bowlers = known.stream().mapToInt(Group::size).sum();
                scenario.value(EventKeys.ENTRIES)
                        .ifPresent(value -> GroupNotices.tooMany(value, squad, bowlers, pairs));
            } else {
                GroupNotices.remark(known, pairs, squad);
            }
        });
        return groups;
    }
}
