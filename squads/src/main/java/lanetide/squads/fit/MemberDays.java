package lanetide.squads.fit;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.play.Setup;
import lanetide.squads.study.Design;
import lanetide.squads.study.Playable;
import lanetide.squads.study.Playing;
import lanetide.squads.study.Watch;
import lanetide.squads.watch.Observers;

/**
 * Members of an ensemble that play some days, each day a few times. All days of one time of a member have one luck;
 * from the second time on what a set draws of its lanes is luck as well, and is drawn anew.
 */
final class MemberDays implements Design {
    private final List<FitDay> days;
    private final List<ValueSet> members;
    private final int times;
    private final int firstLuck;
    private final RandomStreams streams;
    private final Map<Integer, Playable> ready = new ConcurrentHashMap<>();
    /** By number, from when it is known who will watch a playing until it is played. */
    private final Map<Integer, Playable> watched = new ConcurrentHashMap<>();

    MemberDays(List<FitDay> days, List<ValueSet> members, int times, int firstLuck, RandomStreams streams) {
        this.days = days;
        this.members = members;
        this.times = times;
        this.firstLuck = firstLuck;
        this.streams = streams;
    }

    int size() {
        return members.size() * times * days.size();
    }

    /** The number of a playing, by which results are found again. */
    int number(int member, int time, int day) {
        return (member * times + time) * days.size() + day;
    }

    /** The time stands where studies of seats have the seating. */
    @Override
    public Playing playing(int number) {
        int timeOfMember = number / days.size();
        return new Playing(number, firstLuck + timeOfMember, 1 + timeOfMember / times, timeOfMember % times);
    }

    private FitDay day(Playing playing) {
        return days.get(playing.number() % days.size());
    }

    @Override
    public Setup setup(Playing playing) {
        Playable known = watched.remove(playing.number());
        return (known == null ? comes(playing) : known).setup(LuckSource.byBall(luck(playing)));
    }

    private RandomStreams luck(Playing playing) {
        return streams.forReplication(playing.luck());
    }

    private Playable comes(Playing playing) {
        FitDay day = day(playing);
        ValueSet member = members.get(playing.set() - 1);
        int key = (playing.set() - 1) * days.size() + playing.number() % days.size();
        Playable under = ready.computeIfAbsent(key, of -> day.under(member));
        if (playing.seating() == times - 1) {
            ready.remove(key);
        }
        ValueSet drawn = playing.seating() == 0 ? member : member.drawnBy(member.seed() + playing.seating());
        return day.comes(under, drawn, luck(playing));
    }

    /** Reads in a playing what is asked of its day. */
    Watch<double[]> reading(int number, Function<FitDay, List<Reading>> asked) {
        Playing playing = playing(number);
        List<Reading> of = asked.apply(day(playing));
        Playable comes = comes(playing);
        watched.put(number, comes);
        ReadingEye eye = new ReadingEye(of, comes, luck(playing));
        return Watch.by(Observers.of(eye), summary -> FitDay.there(of, eye, comes.event(), summary.result()));
    }
}
