package spoolyard.scenarios.check;

import spoolyard.core.plant.StockItem;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/**
 * In what an article in store is counted. Immutable.
 *
 * @param kind the sort of article
 * @param prefix begins the names of its types in the schema
 * @param any an amount, 0 allowed
 * @param some an amount above 0
 */
record StockAmount(StockItem.Kind kind, String prefix, Kind<Double> any, Kind<Double> some) {
    static final StockAmount RESIN = ofMass(StockItem.Kind.RESIN);
    static final StockAmount CONCENTRATE = ofMass(StockItem.Kind.CONCENTRATE);
    static final StockAmount SPOOLS = ofPieces(StockItem.Kind.SPOOLS, "spool_", Dimension.SPOOLS);
    static final StockAmount CARTONS = ofPieces(StockItem.Kind.CARTONS, "carton_", Dimension.CARTONS);

    private static StockAmount ofMass(StockItem.Kind kind) {
        return new StockAmount(
                kind,
                "",
                QuantityKind.from(Dimension.MASS, "0 kg", "100000 t"),
                QuantityKind.above(Dimension.MASS, "0 kg", "100000 t"));
    }

    private static StockAmount ofPieces(StockItem.Kind kind, String prefix, Dimension dimension) {
        String most = "100000000 " + kind.unit();
        return new StockAmount(
                kind,
                prefix,
                new Pieces(QuantityKind.from(dimension, "0 " + kind.unit(), most), kind.unit()),
                new Pieces(QuantityKind.from(dimension, "1 " + kind.unit(), most), kind.unit()));
    }

    /** An amount, or {@code unlimited}, which reads as infinity. */
    Kind<Double> orUnlimited() {
        return new Unlimited(any);
    }

    private record Unlimited(Kind<Double> amount) implements Kind<Double> {
        @Override
        public Double read(Node node, Reading reading) {
            boolean isUnlimited = node instanceof Node.Text text && text.text().equals("unlimited");
            return isUnlimited ? Double.POSITIVE_INFINITY : amount.read(node, reading);
        }

        @Override
        public Double standIn() {
            return amount.standIn();
        }
    }

    private record Pieces(Kind<Double> amount, String unit) implements Kind<Double> {
        @Override
        public Double read(Node node, Reading reading) {
            double count = amount.read(node, reading);
            if (count != Math.rint(count)) {
                reading.fault(FaultKind.NOT_A_VALUE, node, "Must be a whole number of " + unit + ".", "round it");
            }
            return Math.rint(count);
        }

        @Override
        public Double standIn() {
            return 1.0;
        }
    }
}
