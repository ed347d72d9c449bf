package plantair.api;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.api.QuantityType.Measured;
import plantair.pumpup.PossibleRange;
import tools.jackson.databind.JsonNode;

/** Reads numbers and quantities, and notes those that cannot be true. */
final class NumberReader {

    /** A form takes up to nine digits before the dot and nine after it. */
    private static final double LARGEST = 1e9;

    private static final double SMALLEST = 1e-9;

    private final Problems problems;

    NumberReader(Problems problems) {
        this.problems = problems;
    }

    /** A bare number; null when it is none or outside its limits. */
    @Nullable
    Double number(JsonNode node, @Nullable Limits limits, String path) {
        if (!isUsable(node, path)) {
            return null;
        }
        double number = node.numberValue().doubleValue();
        return limits == null || isWithin(number, limits, node.toString(), path) ? number : null;
    }

    /** {@code {"value": 121, "unit": "[psi]"}}; null when something in it does not fit. */
    <Q> @Nullable Q quantity(JsonNode node, QuantityType<Q, ?> type, @Nullable Limits limits, String path) {
        if (!node.isObject()) {
            problems.add(path, "api.notQuantity");
            return null;
        }
        node.propertyNames().stream()
                .filter(name -> !name.equals("value") && !name.equals("unit"))
                .forEach(name -> problems.add(path + "." + name, "api.unknownField"));
        boolean hasValue = isThere(node, path, "value") && isUsable(node.get("value"), path + ".value");
        boolean hasUnit = isThere(node, path, "unit");
        if (!hasUnit) {
            return null;
        }
        double number = hasValue ? node.get("value").numberValue().doubleValue() : 1;
        String code = node.get("unit").isString() ? node.get("unit").stringValue() : "";
        Optional<Measured<Q>> measured = type.measured(number, code);
        if (measured.isEmpty()) {
            String sent = code.isEmpty() ? node.get("unit").toString() : code;
            problems.add(path + ".unit", "api.unit", Problems.cut(sent), String.join(", ", type.codes()));
        }
        return hasValue && measured.isPresent() ? possible(measured.get(), limits, path) : null;
    }

    private boolean isThere(JsonNode node, String path, String name) {
        boolean there = node.hasNonNull(name);
        if (!there) {
            problems.add(path + "." + name, "api.missing");
        }
        return there;
    }

    private boolean isUsable(JsonNode node, String path) {
        if (!node.isNumber()) {
            problems.add(path, "api.notNumber", Problems.cut(node.toString()));
            return false;
        }
        double size = Math.abs(node.numberValue().doubleValue());
        boolean usable = size < LARGEST && (size == 0 || size >= SMALLEST);
        if (!usable) {
            problems.add(path, "api.numberSize", Problems.cut(node.toString()));
        }
        return usable;
    }

    private <Q> @Nullable Q possible(Measured<Q> measured, @Nullable Limits limits, String path) {
        String text = measured.number() + " " + measured.unit().symbol();
        try {
            Q quantity = measured.quantity();
            return limits == null || isWithin(measured.si(), limits, text, path) ? quantity : null;
        } catch (IllegalArgumentException outsideTheQuantity) {
            problems.add(path, rangeCode(limits), text);
            return null;
        }
    }

    private static String rangeCode(@Nullable Limits limits) {
        return limits == null || limits.range().length == 0 ? "api.impossible" : "range." + limits.range()[0];
    }

    private boolean isWithin(double si, Limits limits, String text, String path) {
        for (PossibleRange range : limits.range()) {
            if (!range.contains(si)) {
                problems.add(path, "range." + range, text);
                return false;
            }
        }
        if (si > limits.above() && si <= limits.to()) {
            return true;
        }
        boolean halfOpen = limits.to() == Double.POSITIVE_INFINITY;
        problems.add(
                path,
                halfOpen ? "number.notPositive" : "api.limits",
                text,
                String.valueOf(limits.above()),
                String.valueOf(limits.to()));
        return false;
    }
}
