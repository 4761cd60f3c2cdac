package spoolyard.scenarios.capacity;

/**
 * Work at the winders and people of a role in a shift, when all lines of the shift run. Immutable.
 *
 * @param role name of the role that attends the winders
 * @param shift name of the shift; of several shifts of the name, the one with the highest load
 * @param heads people of the role in the shift
 * @param presentHeads people there on average: breaks without relief taken off
 * @param attendedHeads people that the spools keep busy, walking not counted
 */
public record CrewCapacity(String role, String shift, int heads, double presentHeads, double attendedHeads) {
    /**
     * Share of their time that people are busy with spools.
     *
     * @return 1 is all of it; 0 if there is no work; infinity if there is work and nobody
     */
    public double loadShare() {
        return attendedHeads == 0 ? 0 : attendedHeads / presentHeads;
    }
}
