/** Discrete-event kernel: a clock in whole milliseconds, a totally ordered event list, and independent replications. */
package lanetide.des;
