package spoolyard.scenarios.check;

import java.util.List;
import spoolyard.core.plant.CrewNeed;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/**
 * Who does a piece of work: a role, a list of roles of which any will do, or {@code nobody}.
 *
 * @param roles names of the roles there are
 */
record CrewNeedKind(List<String> roles) implements Kind<CrewNeed> {
    @Override
    public CrewNeed read(Node node, Reading reading) {
        if (node instanceof Node.Text text && text.text().equals("nobody")) {
            return CrewNeed.NOBODY;
        }
        Kind<String> role = Words.name("role", roles);
        if (node instanceof Node.Sequence) {
            return new CrewNeed(ListKind.some(role).read(node, reading));
        }
        return new CrewNeed(List.of(role.read(node, reading)));
    }

    @Override
    public CrewNeed standIn() {
        return CrewNeed.NOBODY;
    }
}
