package spoolyard.core.process;

/** Takes a finished batch to the next rack, spool by spool as there is room; the work place is blocked until all are there. */
final class Transfer implements Rack.Claimant {
    private final Rack rack;
    private final Server server;
    private final int spools;
    private int moved;
    private boolean starting = true;

    Transfer(Rack rack, Server server) {
        this.rack = rack;
        this.server = server;
        this.spools = server.batch().size();
    }

    void start() {
        for (int i = 0; i < spools; i++) {
            rack.claim(this);
        }
        starting = false;
        if (moved == spools) {
            server.batchGone();
        }
    }

    @Override
    public void granted() {
        rack.put(server.batch().get(moved));
        moved++;
        if (!starting && moved == spools) {
            server.unblocked();
        }
    }
}
