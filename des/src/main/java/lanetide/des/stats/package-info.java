/** Statistics of observations and of values that persist over simulated time. */
package lanetide.des.stats;
