package spoolyard.core.process;

/** What becomes of a spool that leaves the winder. */
enum SpoolGrade {
    /** To the rack, for its order. */
    GOOD("good spool"),
    /** Finished, but sold as second quality. */
    B_GRADE("B-grade spool"),
    /** Rejected at the winder for how it is wound. */
    WINDING_DEFECT("rejected spool"),
    /** Cut short by an excursion out of tolerance. */
    CUT_SHORT("spool cut short"),
    /** Flagged for an excursion and rejected. */
    FLAG_REJECTED("flagged spool rejected");

    private final String label;

    SpoolGrade(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
