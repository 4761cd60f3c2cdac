package spoolyard.scenarios.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;

final class YamlTreeTest {
    private static Node.Mapping tree(String text) {
        Faults faults = new Faults();
        Node node = YamlTree.parse(new SourceText("f.yaml", text), faults).orElseThrow();
        assertThat(faults.all()).isEmpty();
        return (Node.Mapping) node;
    }

    @Test
    void keepsScalarsAsWritten() {
        Map<String, Node> entries = tree("a: 1_000\nb: no\nc: 010\nd: 0x1F\ne: 1.50\nf: 06:00\ng: .inf\nh: 'null'\n")
                .entries();

        assertThat(entries.values())
                .extracting(Node::shown)
                .containsExactly("1_000", "no", "010", "0x1F", "1.50", "06:00", ".inf", "null");
    }

    @Test
    void tellsNothingFromText() {
        Map<String, Node> entries = tree("a:\nb: ~\nc: null\nd: ''\n").entries();

        assertThat(entries.get("a")).isInstanceOf(Node.Nothing.class);
        assertThat(entries.get("b")).isInstanceOf(Node.Nothing.class);
        assertThat(entries.get("c")).isInstanceOf(Node.Nothing.class);
        assertThat(entries.get("d")).isEqualTo(new Node.Text(new Origin("f.yaml", 4, "/d"), ""));
    }

    @Test
    void remembersTheLineOfTheKeyAndThePointer() {
        Node.Mapping tree = tree("# comment\na:\n  b/c:\n    - x\n    -\n      d: 1\n");

        Node.Mapping a = (Node.Mapping) tree.entries().get("a");
        Node.Sequence list = (Node.Sequence) a.entries().get("b/c");
        Node d = ((Node.Mapping) list.items().get(1)).entries().get("d");
        assertThat(a.origin()).isEqualTo(new Origin("f.yaml", 2, "/a"));
        assertThat(list.origin()).isEqualTo(new Origin("f.yaml", 3, "/a/b~1c"));
        assertThat(list.items().get(0).origin()).isEqualTo(new Origin("f.yaml", 4, "/a/b~1c/0"));
        assertThat(d.origin()).isEqualTo(new Origin("f.yaml", 6, "/a/b~1c/1/d"));
    }

    @Test
    void keepsTheOrderOfTheFile() {
        assertThat(tree("z: 1\na: 2\nm: 3\n").entries().keySet()).containsExactly("z", "a", "m");
    }
}
