package lanetide.cli.scenario;

/**
 * One key of a scenario, as the reader knows it and the documents describe it.
 *
 * @param name the key
 * @param unit unit or form of its value
 * @param meaning what it says
 * @param typical usual values, offered where a value is wrong
 * @param otherwise what holds where the key is left out; {@code required} if it must not be
 */
public record Key(String name, String unit, String meaning, String typical, String otherwise) {}
