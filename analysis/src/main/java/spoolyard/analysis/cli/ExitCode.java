package spoolyard.analysis.cli;

/** What the program tells the shell when it ends. */
interface ExitCode {
    /** All is well. */
    int OK = 0;

    /** The program is at fault. */
    int INTERNAL = 1;

    /** The input, or the way the program was called, is at fault; nothing was written. */
    int INPUT = 2;
}
