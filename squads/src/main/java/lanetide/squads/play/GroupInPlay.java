package lanetide.squads.play;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Break;
import lanetide.squads.model.Group;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.Squad;
import lanetide.squads.play.Member.Attendance;

/** A group during its squad: its members, the game it is at, where it stands, and the breaks it has still to take. */
final class GroupInPlay {
    private final String id;
    private final List<Member> members;
    private final List<Break> breaks;
    private final Set<Integer> breaksTaken = new HashSet<>();
    private List<BowlerInGame> players = List.of();
    private int cardsOut;
    private int game;
    private long arrivedMs;
    private PairLanes at;

    private GroupInPlay(String id, List<Member> members, List<Break> breaks) {
        this.id = id;
        this.members = members;
        this.breaks = breaks;
    }

    /** A group of a squad; its members are made by a function of bowler and attendance. */
    static GroupInPlay of(Group group, Squad squad, BiFunction<Bowler, Attendance, Member> member) {
        List<Member> members = new ArrayList<>();
        for (Bowler bowler : group.bowlers()) {
            LineUpChange change = squad.arrangements().changes().stream()
                    .filter(other -> other.bowler().equals(bowler.id()))
                    .findFirst()
                    .orElse(null);
            if (change instanceof LineUpChange.LateArrival late) {
                members.add(member.apply(bowler, new Attendance(0, Integer.MAX_VALUE, late.arrivesMs())));
            } else if (change instanceof LineUpChange.Absence absence) {
                members.add(member.apply(bowler, new Attendance(0, absence.fromGame() - 1, 0)));
            } else if (change instanceof LineUpChange.Substitution substitution) {
                int from = substitution.fromGame() - 1;
                members.add(member.apply(bowler, new Attendance(0, from, 0)));
                members.add(member.apply(substitution.substitute(), new Attendance(from, Integer.MAX_VALUE, 0)));
            } else {
                members.add(member.apply(bowler, Attendance.ALWAYS));
            }
        }
        return new GroupInPlay(group.id(), members, squad.arrangements().breaks());
    }

    String id() {
        return id;
    }

    /** All who bowl at some time, substitutes after whom they stand in for. */
    List<Member> members() {
        return members;
    }

    /** It stands at the pair of a game, from 0. */
    void arrive(int nextGame, long nowMs) {
        game = nextGame;
        arrivedMs = nowMs;
    }

    /** The game it is at, from 0. */
    int game() {
        return game;
    }

    /** When it arrived for this game (ms). */
    long arrivedMs() {
        return arrivedMs;
    }

    /** It bowls on, or waits at, these lanes. */
    void stands(PairLanes lanes) {
        at = lanes;
    }

    /** The lanes where it stood last; empty before its first game. */
    Optional<PairLanes> at() {
        return Optional.ofNullable(at);
    }

    /** These members bowl the game. */
    void begin(List<BowlerInGame> those) {
        players = those;
        cardsOut = those.size();
    }

    /** One of them has played his last frame; when all have, they hand in their cards, and true is answered. */
    boolean oneIsDone() {
        cardsOut--;
        if (cardsOut > 0) {
            return false;
        }
        players.forEach(player -> player.member().bowler().handInCard());
        return true;
    }

    /** Those who bowl a game that begins now, in bowling order. */
    List<Member> playing(int game, long nowMs) {
        return members.stream().filter(member -> member.plays(game, nowMs)).toList();
    }

    /** When the first of those comes whose game it is (ms); empty if the game is nobody's. */
    OptionalLong firstThereMs(int game) {
        return members.stream()
                .filter(member -> member.plays(game, Long.MAX_VALUE))
                .mapToLong(Member::arrivesMs)
                .min();
    }

    /** Takes the breaks that are due when so many games are done (from 1); answers their places in the squad's list. */
    List<Integer> takeBreaks(int gamesDone, long nowMs) {
        return IntStream.range(0, breaks.size())
                .filter(i -> gamesDone >= breaks.get(i).afterGame()
                        && nowMs >= breaks.get(i).notBeforeMs())
                .filter(breaksTaken::add)
                .boxed()
                .toList();
    }
}
