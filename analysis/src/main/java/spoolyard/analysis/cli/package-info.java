/** The command line: the only {@code main}, the only exit codes; imports {@code report}, {@code experiment}. */
package spoolyard.analysis.cli;
