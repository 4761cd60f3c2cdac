/** What is wrong with a scenario and where it stands; imports nothing of ours. */
package spoolyard.scenarios.fault;
