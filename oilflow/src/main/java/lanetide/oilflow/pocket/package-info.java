/** What a ball does to the pins it meets. */
package lanetide.oilflow.pocket;
