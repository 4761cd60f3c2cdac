package spoolyard.core.architecture.planted.record;

import org.assertj.core.api.Assertions;
import spoolyard.core.architecture.planted.engine.Motor;

/** Breaks: what is told knows no engine; and: Java and SSJ only. */
public record Log(Motor motor) {
    /** Calls a library that does not belong here. */
    public void tell() {
        Assertions.assertThat(motor).isNotNull();
    }
}
