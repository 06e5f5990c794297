package lanetide.cli.scenario.notice;

/**
 * A value the answer rests on and the scenario does not state.
 *
 * @param name what it is: the key's path, or the shipped thing it belongs to
 * @param value the value in words
 * @param source where it comes from
 */
public record Assumption(String name, String value, String source) {}
