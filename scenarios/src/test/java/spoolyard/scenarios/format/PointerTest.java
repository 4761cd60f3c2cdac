package spoolyard.scenarios.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.scenarios.fault.Origin;

/** Source: RFC 6901, section 3 (syntax) and the keys of the example in section 5; written down from memory. */
final class PointerTest {
    @Test
    void readsTheKeysOfTheExample() {
        assertThat(Pointer.parse("")).contains(new Pointer(List.of()));
        assertThat(Pointer.parse("/foo/0")).contains(new Pointer(List.of("foo", "0")));
        assertThat(Pointer.parse("/")).contains(new Pointer(List.of("")));
        assertThat(Pointer.parse("/a~1b")).contains(new Pointer(List.of("a/b")));
        assertThat(Pointer.parse("/c%d")).contains(new Pointer(List.of("c%d")));
        assertThat(Pointer.parse("/ ")).contains(new Pointer(List.of(" ")));
        assertThat(Pointer.parse("/m~0n")).contains(new Pointer(List.of("m~n")));
    }

    @Test
    void turnsTheEscapeOfATildeLast() {
        assertThat(Pointer.parse("/~01")).contains(new Pointer(List.of("~1")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"foo", "/a~", "/a~2", "#/a"})
    void refusesWhatIsNoPointer(String text) {
        assertThat(Pointer.parse(text)).isEmpty();
    }

    @Test
    void leadsBackToTheFieldOfAnOrigin() {
        String field = new Origin("f", 1, "/lines").child("a/b~c").field();

        assertThat(Pointer.parse(field)).contains(new Pointer(List.of("lines", "a/b~c")));
    }
}
