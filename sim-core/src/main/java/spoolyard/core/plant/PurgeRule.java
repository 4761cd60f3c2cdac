package spoolyard.core.plant;

/** How much a pair of colours purges that was not measured: by shade class, or by estimate pair by pair. Immutable. */
public sealed interface PurgeRule permits PurgeFormula, PurgeEstimate {}
