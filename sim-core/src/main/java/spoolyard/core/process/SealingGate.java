package spoolyard.core.process;

/** Looks at a spool when it is its turn at a station. */
interface SealingGate {
    /** Lets everything in. */
    SealingGate OPEN = new SealingGate() {
        @Override
        public boolean refuses(Spool spool) {
            return false;
        }

        @Override
        public void turnAway(Spool spool) {
            throw new IllegalStateException("an open gate turned a spool away.");
        }

        @Override
        public void admitted(Spool spool) {
            // nothing to note
        }
    };

    /** Whether a spool must not go in now. */
    boolean refuses(Spool spool);

    /** Takes a spool that must not go in; it has left the rack. */
    void turnAway(Spool spool);

    /** A spool goes in. */
    void admitted(Spool spool);
}
