package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Grits;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Level;

/** The kinds of bowlers a question is about: one for each style, hand and ball, from the fewest revs to the most. */
public final class Kinds {
    private static final Comparator<PlayingStyle> BY_REVS = Comparator.<PlayingStyle>comparingDouble(
                    style -> style.release().spinRadps())
            .thenComparing(PlayingStyle::id);

    private final List<Bowler> bowlers;
    private final Question question;

    private Kinds(Event event, Question question) {
        this.bowlers = event.squads().stream()
                .flatMap(squad -> squad.groups().stream())
                .flatMap(group -> group.bowlers().stream())
                .toList();
        this.question = question;
    }

    /** A ball and a level that go together. */
    private record Equipment(Coverstock cover, Level level) {}

    /**
     * The kinds.
     *
     * @param event whose bowlers count
     * @param question what is asked
     * @return by style, then hand
     */
    public static List<Kind> of(Event event, Question question) {
        return new Kinds(event, question).list();
    }

    private List<Kind> list() {
        List<Kind> kinds = new ArrayList<>();
        styles().forEach((style, playing) -> {
            Equipment usual = commonest(playing.isEmpty() ? bowlers : playing);
            for (Hand hand : hands(playing.isEmpty() ? bowlers : playing)) {
                for (Coverstock ball : balls(usual.cover())) {
                    kinds.add(new Kind(style, hand, ball, question.level().orElse(usual.level())));
                }
            }
        });
        return kinds;
    }

    /** The balls asked for, each with every finish asked for. */
    private List<Coverstock> balls(Coverstock usual) {
        List<Coverstock> covers = question.covers().isEmpty() ? List.of(usual) : question.covers();
        if (question.grits().isEmpty()) {
            return covers;
        }
        Grits grits = Grits.shipped();
        return covers.stream()
                .flatMap(cover -> question.grits().stream().map(grit -> grits.sanded(cover, grit)))
                .toList();
    }

    /** The styles asked for, each with the bowlers who play it. */
    private SortedMap<PlayingStyle, List<Bowler>> styles() {
        SortedMap<PlayingStyle, List<Bowler>> styles = new TreeMap<>(BY_REVS);
        question.styles().forEach(style -> styles.put(style, new ArrayList<>()));
        for (Bowler bowler : bowlers) {
            if (question.styles().isEmpty()) {
                styles.computeIfAbsent(bowler.style(), style -> new ArrayList<>());
            }
            if (styles.containsKey(bowler.style())) {
                styles.get(bowler.style()).add(bowler);
            }
        }
        return styles;
    }

    private List<Hand> hands(List<Bowler> playing) {
        return question.hands().isEmpty()
                ? playing.stream().map(Bowler::hand).distinct().sorted().toList()
                : question.hands().stream().distinct().sorted().toList();
    }

    /** The commonest ball and level; of equally common ones the first in the field. */
    private static Equipment commonest(List<Bowler> playing) {
        Map<Equipment, Integer> counts = new LinkedHashMap<>();
        playing.forEach(bowler -> counts.merge(new Equipment(bowler.cover(), bowler.level()), 1, Integer::sum));
        return counts.entrySet().stream()
                .reduce((most, next) -> next.getValue() > most.getValue() ? next : most)
                .orElseThrow()
                .getKey();
    }
}
