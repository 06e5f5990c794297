/** What is not known of the model: the values that nobody has measured, with their ranges, and sets of them. */
package lanetide.oilflow.unknown;
