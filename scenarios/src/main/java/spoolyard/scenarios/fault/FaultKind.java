package spoolyard.scenarios.fault;

/** What sort of fault it is. */
public enum FaultKind {
    /** A file that is named but not there, or not a plain file. */
    MISSING_FILE,
    /** A file with nothing in it. */
    EMPTY_FILE,
    /** A file larger than any scenario needs. */
    FILE_TOO_LARGE,
    /** Bytes that are not UTF-8. */
    BAD_ENCODING,
    /** Text that is not YAML, or not a CSV table. */
    BAD_SYNTAX,
    /** Anchors, aliases and tags, which scenario files do without. */
    ALIAS,
    /** Nesting deeper than any scenario needs. */
    TOO_DEEP,
    /** A variation that leads back to itself. */
    CIRCULAR_BASE,
    /** A JSON Pointer or command-line setting that leads nowhere. */
    BAD_POINTER,
    /** A key that nobody reads. */
    UNKNOWN_KEY,
    /** A key given twice in one mapping. */
    DUPLICATE_KEY,
    /** A value that must be given. */
    MISSING_VALUE,
    /** A mapping where a text is asked for, and the like. */
    WRONG_SHAPE,
    /** Text that is not a value of the kind asked for. */
    NOT_A_VALUE,
    /** A quantity with no unit or a unit of another kind. */
    WRONG_UNIT,
    /** A value outside its range. */
    OUT_OF_RANGE,
    /** A name that stands for nothing. */
    UNKNOWN_NAME,
    /** A name or id given twice. */
    DUPLICATE_NAME,
    /** A distribution with impossible parameters. */
    IMPOSSIBLE_DISTRIBUTION,
    /** A header that misses a column or has one twice. */
    BAD_HEADER,
    /** A row with too few or too many cells. */
    ROW_LENGTH,
    /** Values that contradict each other. */
    CONTRADICTION,
    /** An order due before it is released. */
    DUE_BEFORE_RELEASE,
    /** Two shifts at the same time. */
    OVERLAPPING_SHIFTS,
    /** A folder in which nothing can be or may be written. */
    NOT_WRITABLE,
    /** A changeover that can occur and for which nothing says how much to purge. */
    UNKNOWN_PURGE
}
