package lanetide.squads.rotation.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.Session;

/**
 * How fresh the lanes are that each group meets, told from the plan alone: by the games bowled on a pair since it was
 * oiled. A game without a group leaves a pair as it is.
 *
 * <p>An oiling is cut into three equal parts by the most games that any pair sees between two oilings: a pair is fresh
 * in the first third, worn in the last.
 *
 * @param longestOiling the most games any pair sees between two oilings, at least 1
 * @param groups what each group finds, in the order of squads and groups
 */
public record WearExposure(int longestOiling, List<GroupExposure> groups) {
    /** Copies the list. */
    public WearExposure {
        groups = List.copyOf(groups);
    }

    /**
     * Follows the lanes through an event.
     *
     * @param sessions the squads' turns in order, at least one, all over the same pairs; the lanes are freshly oiled
     *     before the first
     * @return the exposure of every group, games of a squad's several turns taken together
     * @throws IllegalArgumentException if there is no session, pairs differ, or a squad's turns differ in groups
     */
    public static WearExposure of(List<Session> sessions) {
        requireAlike(sessions);
        int longest = longest(sessions);
        Map<String, List<Sums>> sums = new LinkedHashMap<>();
        Wear wear = new Wear(sessions.get(0).rotation().pairs());
        for (Session session : sessions) {
            List<Sums> own = sums.computeIfAbsent(session.squad(), squad -> sumsOf(session));
            if (own.size() != session.groups().size()) {
                throw new IllegalArgumentException("squad " + session.squad() + " has " + own.size()
                        + " groups and then " + session.groups().size() + "; they must stay the same");
            }
            wear.play(session, (group, pair) -> own.get(group).arrive(wear, pair, longest));
        }
        List<GroupExposure> groups = new ArrayList<>();
        sums.forEach((squad, own) -> own.forEach(sum -> groups.add(sum.exposure(squad))));
        return new WearExposure(longest, groups);
    }

    /**
     * What the groups of one squad find.
     *
     * @param squad its name
     * @return in the order of groups; empty if there is no such squad
     */
    public List<GroupExposure> groupsOf(String squad) {
        return groups.stream().filter(group -> group.squad().equals(squad)).toList();
    }

    private static void requireAlike(List<Session> sessions) {
        if (sessions.isEmpty()) {
            throw new IllegalArgumentException("sessions is empty, but there must be at least one");
        }
        int pairs = sessions.get(0).rotation().pairs();
        for (Session session : sessions) {
            if (session.rotation().pairs() != pairs) {
                throw new IllegalArgumentException("squad " + session.squad() + " has "
                        + session.rotation().pairs() + " pairs, the first squad " + pairs + "; all must be equal");
            }
        }
    }

    private static int longest(List<Session> sessions) {
        Wear wear = new Wear(sessions.get(0).rotation().pairs());
        int[] longest = {1};
        for (Session session : sessions) {
            wear.play(session, (group, pair) -> longest[0] = Math.max(longest[0], wear.games[pair] + 1));
        }
        return longest[0];
    }

    private static List<Sums> sumsOf(Session session) {
        List<Sums> sums = new ArrayList<>();
        for (int group = 0; group < session.groups().size(); group++) {
            sums.add(new Sums(group));
        }
        return sums;
    }

    /** What has been bowled on each pair since it was oiled. */
    private static final class Wear {
        private final int[] games;
        private final int[] right;
        private final int[] left;

        Wear(int pairs) {
            games = new int[pairs];
            right = new int[pairs];
            left = new int[pairs];
        }

        interface Arrival {
            void of(int group, int pair);
        }

        /** Tells every arrival before the game is bowled. */
        void play(Session session, Arrival arrival) {
            for (int pair : session.oiled() ? session.pairs() : List.<Integer>of()) {
                games[pair] = 0;
                right[pair] = 0;
                left[pair] = 0;
            }
            Rotation rotation = session.rotation();
            for (int game = 0; game < rotation.games(); game++) {
                for (int group = 0; group < rotation.groups(); group++) {
                    arrival.of(group, rotation.pairOf(game, group));
                }
                for (int group = 0; group < rotation.groups(); group++) {
                    bowl(rotation.pairOf(game, group), session.groups().get(group));
                }
            }
        }

        private void bowl(int pair, Hands hands) {
            games[pair]++;
            right[pair] += hands.right();
            left[pair] += hands.left();
        }
    }

    /** What one group has found so far. */
    private static final class Sums {
        private final int group;
        private final int[] games = new int[3];
        private long age;
        private long right;
        private long left;

        Sums(int group) {
            this.group = group;
        }

        void arrive(Wear wear, int pair, int longest) {
            games[3 * wear.games[pair] / longest]++;
            age += wear.games[pair];
            right += wear.right[pair];
            left += wear.left[pair];
        }

        GroupExposure exposure(String squad) {
            double all = (double) games[0] + games[1] + games[2];
            return new GroupExposure(squad, group, games[0], games[1], games[2], age / all, right / all, left / all);
        }
    }
}
