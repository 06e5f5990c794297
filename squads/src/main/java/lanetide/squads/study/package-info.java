/** An event played many times: numbered playings, each with its summary, and what they say together. */
package lanetide.squads.study;
