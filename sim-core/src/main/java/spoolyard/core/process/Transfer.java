package spoolyard.core.process;

/** Takes a finished batch to the next rack, spool by spool as there is room; the work place is blocked until all are there. */
final class Transfer implements Rack.Claimant {
    private final Rack rack;
    private final Server server;
    private boolean starting = true;

    Transfer(Rack rack, Server server) {
        this.rack = rack;
        this.server = server;
    }

    void start() {
        for (int left = server.batch().size(); left > 0; left--) {
            rack.claim(this);
        }
        starting = false;
        if (server.batch().isEmpty()) {
            server.batchGone();
        }
    }

    @Override
    public void granted() {
        rack.put(server.batch().remove(0));
        if (!starting && server.batch().isEmpty()) {
            server.unblocked();
        }
    }
}
