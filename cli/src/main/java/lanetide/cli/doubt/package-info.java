/** What makes an answer doubtful: lanes, balls and scores beyond what the model was held to. */
package lanetide.cli.doubt;
