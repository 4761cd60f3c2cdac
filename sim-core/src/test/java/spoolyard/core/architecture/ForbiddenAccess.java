package spoolyard.core.architecture;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Map;
import java.util.Set;

/** Calls, method references and field reads that the core must not contain. */
final class ForbiddenAccess {
    private static final Set<String> UNORDERED_COLLECTORS = Set.of(
            "toSet", "toUnmodifiableSet", "toMap", "toUnmodifiableMap", "toConcurrentMap", "groupingByConcurrent");

    private static final Set<String> DEFAULT_LOCALE_METHODS =
            Set.of("toLowerCase", "toUpperCase", "format", "formatted");

    private ForbiddenAccess() {}

    /** Reads what a run must be given: the system, its clock, chance, zone or locale, or its threads. */
    static boolean readsHiddenInput(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getName();
        return owner.equals("java.lang.System") && !name.equals("arraycopy")
                || owner.equals("java.lang.Math") && name.equals("random")
                || owner.startsWith("java.time.") && (name.equals("now") || name.equals("systemDefault"))
                || owner.equals("java.util.Locale") && name.equals("getDefault")
                || owner.equals("java.util.TimeZone") && name.equals("getDefault")
                || name.equals("parallelStream")
                || owner.startsWith("java.util.stream.") && name.equals("parallel")
                || usesDefaultLocale(access);
    }

    private static boolean usesDefaultLocale(JavaAccess<?> access) {
        return access.getTargetOwner().isEquivalentTo(String.class)
                && DEFAULT_LOCALE_METHODS.contains(access.getName())
                && !access.getTarget().getFullName().contains("java.util.Locale");
    }

    /** Makes a set or map whose order of iteration is not fixed. */
    static boolean makesUnordered(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        String name = access.getName();
        boolean isFactory = owner.isEquivalentTo(Set.class) || owner.isEquivalentTo(Map.class);
        boolean hasSupplier = access.getTarget().getFullName().contains("java.util.function.Supplier");
        boolean isCollector = owner.getName().equals("java.util.stream.Collectors")
                && (UNORDERED_COLLECTORS.contains(name) || name.equals("groupingBy"));
        return isFactory && Set.of("of", "copyOf", "ofEntries").contains(name) || isCollector && !hasSupplier;
    }
}
