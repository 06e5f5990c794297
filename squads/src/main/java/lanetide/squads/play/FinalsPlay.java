package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Finals;
import lanetide.squads.model.Finals.Match;
import lanetide.squads.model.Finals.Side;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.result.FinalsResult;
import lanetide.squads.result.FinalsResult.Finalist;
import lanetide.squads.rotation.Rotation;

/**
 * The finals, on the lanes as the last squad left them: round after round of matches of two, each on a pair of its own.
 * Everybody keeps what he has learned from round to round.
 */
final class FinalsPlay {
    private final Day day;
    private final Finals finals;
    private final boolean withHandicap;
    private final SquadPlan last;
    private final List<Member> seeds;
    private final double[] wins;
    private final int[] lastMatch;
    private final List<Integer> winners = new ArrayList<>();
    private final List<Integer> losers = new ArrayList<>();
    private long endMs;

    /**
     * Finals that have still to be played.
     *
     * @param day what nobody watches any more
     * @param finals their plan
     * @param withHandicap whether handicap counts
     * @param last what was planned for the last squad, whose lanes and patterns they have
     * @param bowlers those who go on, by seed
     * @param member makes a bowler ready to bowl
     */
    FinalsPlay(
            Day day,
            Finals finals,
            boolean withHandicap,
            SquadPlan last,
            List<Bowler> bowlers,
            Function<Bowler, Member> member) {
        this.day = day;
        this.finals = finals;
        this.withHandicap = withHandicap;
        this.last = last;
        this.seeds = bowlers.stream().map(member).toList();
        this.wins = new double[seeds.size()];
        this.lastMatch = new int[seeds.size()];
    }

    /** Begins with the first round; the others follow by themselves. */
    void begin() {
        play(0);
    }

    private void play(int round) {
        if (round == finals.rounds().size()) {
            endMs = day.simulator().nowMs();
            return;
        }
        List<Match> matches = finals.rounds().get(round);
        Squad squad = squad(round, matches);
        Iterator<Integer> inTurn = matches.stream()
                .flatMap(match -> Stream.of(seedOf(match.first()), seedOf(match.second())))
                .iterator();
        List<GroupInPlay> groups = squad.groups().stream()
                .map(group -> GroupInPlay.of(group, squad, (bowler, attendance) -> seeds.get(inTurn.next())))
                .toList();
        int pairs = day.lanes().size();
        Centre centre = day.event().centre();
        List<Integer> places = finals.pairs(centre.keeping(last.own())).stream()
                .map(centre.pairs()::indexOf)
                .toList();
        Rotation rotation =
                Rotation.tabulate(matches.size(), pairs, finals.games(), (game, group) -> places.get(group));
        new SquadPlay(day, squad, last.withRotation(rotation), groups, (startMs, lastMs, pace) -> {
                    matches.forEach(this::decide);
                    play(round + 1);
                })
                .begin();
    }

    private Squad squad(int round, List<Match> matches) {
        List<Group> groups = IntStream.range(0, matches.size())
                .mapToObj(i -> new Group(
                        String.valueOf(i + 1),
                        List.of(
                                bowler(seedOf(matches.get(i).first())),
                                bowler(seedOf(matches.get(i).second())))))
                .toList();
        boolean first = round == 0;
        long walkMs = first
                ? 0
                : day.event().pace().movePerPairMs() + day.event().pace().settleMs();
        return new Squad(
                "finals",
                Math.max(finals.startMs(), day.simulator().nowMs() + walkMs),
                first ? finals.conditioning() : Conditioning.NONE,
                first ? finals.practiceMs() : 0,
                groups,
                Arrangements.NONE);
    }

    private Bowler bowler(int seed) {
        return seeds.get(seed).bowler().bowler();
    }

    /** Who a side is, from 0. */
    private int seedOf(Side side) {
        return switch (side.from()) {
            case SEED -> side.number() - 1;
            case WINNER -> winners.get(side.number() - 1);
            case LOSER -> losers.get(side.number() - 1);
        };
    }

    /** Of two with the same pins the better seed wins, but for a round robin, where each has half a win. */
    private void decide(Match match) {
        int first = seedOf(match.first());
        int second = seedOf(match.second());
        int lead = Integer.compare(pinsOfMatch(first), pinsOfMatch(second));
        if (lead == 0 && finals.isRoundRobin()) {
            wins[first] += 0.5;
            wins[second] += 0.5;
        }
        boolean firstWins = lead == 0 ? first < second : lead > 0;
        int winner = firstWins ? first : second;
        if (lead != 0 || !finals.isRoundRobin()) {
            wins[winner]++;
        }
        winners.add(winner);
        losers.add(firstWins ? second : first);
        lastMatch[first] = winners.size();
        lastMatch[second] = winners.size();
    }

    private int pinsOfMatch(int seed) {
        List<Integer> games = games(seed);
        return games.subList(games.size() - finals.games(), games.size()).stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    private List<Integer> games(int seed) {
        BowlerInPlay bowler = seeds.get(seed).bowler();
        int handicap = withHandicap ? bowler.bowler().handicapPins() : 0;
        return bowler.scores().stream().map(game -> game + handicap).toList();
    }

    /** What came of them, once they are over. */
    FinalsResult result() {
        List<Integer> order =
                IntStream.range(0, seeds.size()).boxed().sorted(standing()).toList();
        return new FinalsResult(
                endMs,
                IntStream.range(0, seeds.size())
                        .mapToObj(seed -> new Finalist(
                                bowler(seed).id(), seed + 1, games(seed), wins[seed], order.indexOf(seed) + 1))
                        .toList());
    }

    /** By pins and bonus, or by who came furthest; of equals the better seed first. */
    private Comparator<Integer> standing() {
        Comparator<Integer> best = finals.isRoundRobin()
                ? Comparator.comparingDouble(seed -> -points(seed))
                : Comparator.<Integer>comparingInt(seed -> -lastMatch[seed])
                        .thenComparingInt(seed -> winners.get(Math.max(0, lastMatch[seed] - 1)) == (int) seed ? 0 : 1);
        return best.thenComparing(Comparator.naturalOrder());
    }

    private double points(int seed) {
        return games(seed).stream().mapToInt(Integer::intValue).sum() + finals.bonusPins() * wins[seed];
    }

    /** What is left of the oil on everybody's balls. */
    List<BowlerInPlay> bowlers() {
        return seeds.stream().map(Member::bowler).toList();
    }
}
