package lanetide.cli.scenario.value;

import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;

/**
 * A value of a block whose keys are free names.
 *
 * @param name its key
 * @param place where the name stands
 * @param block path of the block
 * @param value what stands under the name
 * @param notices takes what is wrong with the name
 */
public record NamedValue(String name, Place place, String block, Value value, Notices notices) {
    /** Adds a notice about the name. The problem is worded to follow {@code BLOCK names NAME}. */
    public void refuse(NoticeCode code, String problem) {
        notices.add(code, place, block, name, block + " names `" + Notices.quote(name) + "`" + problem);
    }

    /** The known thing of this name; empty, with a notice, if there is none. */
    public <T> Optional<T> oneOf(Map<String, T> known, String kind) {
        if (!known.containsKey(name)) {
            refuse(NoticeCode.UNKNOWN_NAME, Value.unknown(name, known.keySet(), kind));
        }
        return Optional.ofNullable(known.get(name));
    }
}
