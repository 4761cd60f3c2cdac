package spoolyard.analysis.cli;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * What asks the program to end, heard in place of ending it: Ctrl-C (INT), kill (TERM), the end of the terminal (HUP). Java has
 * no standard way to hear them: that of the OpenJDK is called by name, and where it is missing they go on to end the program.
 */
final class Signals {
    private static final List<String> NAMES = List.of("INT", "TERM", "HUP");

    private final Map<Object, Object> usual = new LinkedHashMap<>();
    private final Consumer<String> heard;

    private Signals(Consumer<String> heard) {
        this.heard = heard;
    }

    /**
     * Hears them from now on.
     *
     * @param heard hears the name of each as it comes
     * @return to be released
     */
    static Signals to(Consumer<String> heard) {
        Signals signals = new Signals(heard);
        for (String name : NAMES) {
            try {
                signals.hear(name);
            } catch (ReflectiveOperationException notOnThisSystem) {
                continue;
            }
        }
        return signals;
    }

    private void hear(String name) throws ReflectiveOperationException {
        Class<?> handlers = Class.forName("sun.misc.SignalHandler");
        Object ours = Proxy.newProxyInstance(
                handlers.getClassLoader(), new Class<?>[] {handlers}, (proxy, method, arguments) -> {
                    if (method.getDeclaringClass() == Object.class) {
                        return method.invoke(this, arguments);
                    }
                    heard.accept(name);
                    return null;
                });
        Object signal = signal(name);
        usual.put(signal, handle().invoke(null, signal, ours));
    }

    private static Object signal(String name) throws ReflectiveOperationException {
        Constructor<?> named = Class.forName("sun.misc.Signal").getConstructor(String.class);
        return named.newInstance(name);
    }

    private static Method handle() throws ReflectiveOperationException {
        Class<?> signals = Class.forName("sun.misc.Signal");
        return signals.getMethod("handle", signals, Class.forName("sun.misc.SignalHandler"));
    }

    /** From now on each does what it did before. May be called again. */
    synchronized void release() {
        usual.forEach((signal, before) -> {
            try {
                handle().invoke(null, signal, before);
            } catch (ReflectiveOperationException cannotBe) {
                throw new IllegalStateException(cannotBe);
            }
        });
        usual.clear();
    }

    /** Sends one to this program, as if it came only now. */
    static void send(String name) {
        try {
            Object signal = signal(name);
            signal.getClass().getMethod("raise", signal.getClass()).invoke(null, signal);
        } catch (ReflectiveOperationException cannotBe) {
            throw new IllegalStateException(cannotBe);
        }
    }
}
