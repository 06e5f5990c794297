package lanetide.cli.scenario.value;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.Parser;

/**
 * Composes YAML 1.2 into nodes that know their line, after a look at the event stream has made sure that this is safe:
 * no deep nesting, no aliases, one document.
 */
public final class YamlTree {
    /** Deepest nesting: a scenario's own deepest value lies five levels down. */
    public static final int MAX_LEVELS = 20;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setAllowDuplicateKeys(true)
            // They are refused with their place where a block is opened.
            .setAllowNonScalarKeys(true)
            .build();

    private final Notices notices;

    /** A reader of YAML; what is wrong with it goes to the notices. */
    public YamlTree(Notices notices) {
        this.notices = notices;
    }

    /** The root of the text; empty, with a notice, if it is not safe or not YAML. */
    public Optional<Node> compose(String text) {
        try {
            List<Event> events = new ArrayList<>();
            if (!areSafe(text, events)) {
                return Optional.empty();
            }
            Optional<Node> root = new Composer(SETTINGS, new Parsed(events)).getSingleNode();
            if (root.isEmpty()) {
                add(
                        NoticeCode.FILE_EMPTY,
                        Place.START,
                        "",
                        "The file holds no scenario: it must at least have name, centre, pattern, games, squads and"
                                + " field. Start from one of the files in scenarios.");
            }
            return root;
        } catch (MarkedYamlEngineException e) {
            syntaxError(e, text);
        } catch (YamlEngineException e) {
            add(
                    NoticeCode.SYNTAX_ERROR,
                    Place.START,
                    "",
                    "The file cannot be read as YAML: " + e.getMessage().replaceAll("\\.$", "") + ".");
        }
        return Optional.empty();
    }

    /** Parses a text and keeps its events, up to the first that a scenario must not have. */
    private boolean areSafe(String text, List<Event> events) {
        int depth = 0;
        int documents = 0;
        for (Event event : new Parse(SETTINGS).parseString(text)) {
            events.add(event);
            depth += event instanceof CollectionStartEvent ? 1 : event instanceof CollectionEndEvent ? -1 : 0;
            documents += event instanceof DocumentStartEvent ? 1 : 0;
            Place place = event.getStartMark().map(Place::of).orElse(Place.START);
            if (depth > MAX_LEVELS) {
                return refuse(
                        NoticeCode.NESTING_TOO_DEEP,
                        place,
                        "level " + depth,
                        "Lists and blocks stand inside each other more than " + MAX_LEVELS
                                + " levels deep, and a scenario needs at most 5. Check the brackets.");
            }
            if (documents > 1) {
                return refuse(
                        NoticeCode.SEVERAL_DOCUMENTS,
                        place,
                        "---",
                        "A second document starts here, and a file must hold one scenario. Put each into its own file.");
            }
            if (!isPlain(event, place)) {
                return false;
            }
        }
        return true;
    }

    private boolean isPlain(Event event, Place place) {
        Optional<Anchor> anchor = event instanceof NodeEvent node ? node.getAnchor() : Optional.empty();
        if (anchor.isPresent()) {
            String sign = event instanceof AliasEvent ? "*" : "&";
            return refuse(
                    NoticeCode.ALIAS_REFUSED,
                    place,
                    sign + anchor.get().getValue(),
                    "Anchors (&) and aliases (*) must not stand in a scenario. Write the value out, or put it in quotes if"
                            + " it is a text.");
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        return tag.isEmpty()
                || refuse(
                        NoticeCode.TAG_REFUSED,
                        place,
                        tag.get().replace("tag:yaml.org,2002:", "!!"),
                        "Tags (!) must not stand in a scenario. Leave it out, or put the value in quotes if it is a text.");
    }

    /** Events that were looked at already, for the composer to read once more. */
    private static final class Parsed implements Parser {
        private final Deque<Event> left;

        Parsed(List<Event> events) {
            left = new ArrayDeque<>(events);
        }

        @Override
        public boolean hasNext() {
            return !left.isEmpty();
        }

        @Override
        public boolean checkEvent(Event.ID kind) {
            return hasNext() && left.element().getEventId() == kind;
        }

        @Override
        public Event peekEvent() {
            return left.element();
        }

        @Override
        public Event next() {
            return left.remove();
        }
    }

    private void syntaxError(MarkedYamlEngineException e, String text) {
        Place place = e.getProblemMark().or(e::getContextMark).map(Place::of).orElse(Place.START);
        List<String> lines = text.lines().toList();
        String line = place.line() <= lines.size() ? lines.get(place.line() - 1) : "";
        String indentation =
                line.substring(0, line.length() - line.stripLeading().length());
        if (indentation.contains("\t")) {
            add(
                    NoticeCode.TAB_INDENTATION,
                    place,
                    line,
                    "This line is indented with a tab, and YAML must be indented with spaces. Put two spaces for each tab.");
        } else {
            add(
                    NoticeCode.SYNTAX_ERROR,
                    place,
                    line,
                    "The file cannot be read as YAML here (" + e.getProblem()
                            + "). Each line must be `key: value` or `- item`, indented like its neighbours: check the"
                            + " indentation, colons, quotes and brackets on this line and the one above.");
        }
    }

    private boolean refuse(NoticeCode code, Place place, String value, String message) {
        add(code, place, value, message);
        return false;
    }

    private void add(NoticeCode code, Place place, String value, String message) {
        notices.add(code, place, "", value, message);
    }
}
