/** When to oil again: how lanes change with the games played on one oiling, and the interval that costs least. */
package lanetide.squads.recondition;
