/** An event played on the event kernel, shot by shot, on the present film of every lane. */
package lanetide.squads.play;
