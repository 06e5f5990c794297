/** Things of limited number that others wait for, such as lane machines: requests, queues, pre-emption, statistics. */
package lanetide.des.resource;
