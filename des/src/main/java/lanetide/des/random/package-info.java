/** Named random streams: every source of chance has its own, and keeps it whatever else is added to the model. */
package lanetide.des.random;
