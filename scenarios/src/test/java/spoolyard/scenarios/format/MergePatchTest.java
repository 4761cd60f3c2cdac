package spoolyard.scenarios.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceText;
import spoolyard.scenarios.read.YamlTree;

final class MergePatchTest {
    /** Source: RFC 7396, appendix A, "Example Test Cases", all fifteen; written down from memory. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        {"a":"b"}             | {"a":"c"}               | {a:c}
        {"a":"b"}             | {"b":"c"}               | {a:b,b:c}
        {"a":"b"}             | {"a":null}              | {}
        {"a":"b","b":"c"}     | {"a":null}              | {b:c}
        {"a":["b"]}           | {"a":"c"}               | {a:c}
        {"a":"c"}             | {"a":["b"]}             | {a:[b]}
        {"a":{"b":"c"}}       | {"a":{"b":"d","c":null}} | {a:{b:d}}
        {"a":[{"b":"c"}]}     | {"a":[1]}               | {a:[1]}
        ["a","b"]             | ["c","d"]               | [c,d]
        {"a":"b"}             | ["c"]                   | [c]
        {"a":"foo"}           | null                    | null
        {"a":"foo"}           | "bar"                   | bar
        {"e":null}            | {"a":1}                 | {e:null,a:1}
        [1,2]                 | {"a":"b","c":null}      | {a:b}
        {}                    | {"a":{"bb":{"ccc":null}}} | {a:{bb:{}}}
        """)
    void followsTheStandard(String target, String patch, String expected) {
        assertThat(shown(MergePatch.apply(tree(target), tree(patch)))).isEqualTo(expected);
    }

    private static Node tree(String json) {
        return YamlTree.parse(new SourceText("test", json), new Faults()).orElseThrow();
    }

    private static String shown(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().entrySet().stream()
                    .map(e -> e.getKey() + ":" + shown(e.getValue()))
                    .collect(Collectors.joining(",", "{", "}"));
        }
        if (node instanceof Node.Sequence sequence) {
            return sequence.items().stream().map(MergePatchTest::shown).collect(Collectors.joining(",", "[", "]"));
        }
        return node instanceof Node.Text text ? text.text() : "null";
    }
}
