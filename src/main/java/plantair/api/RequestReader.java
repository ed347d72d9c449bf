package plantair.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Fills the records of a request by the names and types of their components, and notes all that does not fit. */
final class RequestReader {

    private static final int MOST_ITEMS = 100;
    private static final int LONGEST_TEXT = 120;

    private final Problems problems;
    private final NumberReader numbers;

    RequestReader(Problems problems) {
        this.problems = problems;
        this.numbers = new NumberReader(problems);
    }

    /** The record; null when there is no object. A component that does not fit is null. */
    <R> @Nullable R read(JsonNode node, Class<R> type, String path) {
        if (!node.isObject()) {
            problems.add(path, "api.notObject");
            return null;
        }
        RecordComponent[] components = type.getRecordComponents();
        Set<String> known = Stream.of(components).map(RequestReader::name).collect(Collectors.toSet());
        node.propertyNames().stream()
                .filter(name -> !known.contains(name))
                .forEach(name -> problems.add(join(path, name), "api.unknownField"));
        Object[] values = Stream.of(components)
                .map(component -> component(node, component, join(path, name(component))))
                .toArray();
        return construct(type, components, values);
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static String name(RecordComponent component) {
        var named = component.getAccessor().getAnnotation(JsonProperty.class);
        return named == null ? component.getName() : named.value();
    }

    /** Null stands for a field left out. */
    private @Nullable Object component(JsonNode parent, RecordComponent component, String path) {
        JsonNode node = parent.path(name(component));
        if (!node.isMissingNode() && !node.isNull()) {
            return value(node, component, path);
        }
        var schema = component.getAccessor().getAnnotation(Schema.class);
        if (schema != null && schema.requiredMode() == Schema.RequiredMode.REQUIRED) {
            problems.add(path, "api.missing");
        }
        return null;
    }

    private @Nullable Object value(JsonNode node, RecordComponent component, String path) {
        Type generic = component.getGenericType();
        if (generic instanceof ParameterizedType list) {
            return items(node, (Class<?>) list.getActualTypeArguments()[0], path);
        }
        Class<?> type = component.getType();
        Optional<QuantityType<?, ?>> quantity = QuantityType.of(type);
        Limits limits = component.getAnnotation(Limits.class);
        if (quantity.isPresent()) {
            return numbers.quantity(node, quantity.get(), limits, path);
        }
        if (type == Double.class) {
            return numbers.number(node, limits, path);
        }
        if (type.isEnum()) {
            return constant(node, type, path);
        }
        return type == String.class ? text(node, path) : read(node, type, path);
    }

    private @Nullable List<?> items(JsonNode node, Class<?> type, String path) {
        if (!node.isArray()) {
            problems.add(path, "api.notArray");
            return null;
        }
        if (node.size() > MOST_ITEMS) {
            problems.add(path, "api.tooMany", String.valueOf(MOST_ITEMS));
            return null;
        }
        List<Object> items = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            Object item = read(node.get(i), type, path + "[" + i + "]");
            if (item != null) {
                items.add(item);
            }
        }
        return items;
    }

    private @Nullable Object constant(JsonNode node, Class<?> type, String path) {
        Object[] constants = type.getEnumConstants();
        String sent = node.isString() ? node.stringValue() : node.toString();
        Optional<Object> chosen = Stream.of(constants)
                .filter(constant -> constant.toString().equals(sent))
                .findFirst();
        if (chosen.isEmpty()) {
            String choices = Stream.of(constants).map(Object::toString).collect(Collectors.joining(", "));
            problems.add(path, "api.choice", Problems.cut(sent), choices);
        }
        return chosen.orElse(null);
    }

    private @Nullable String text(JsonNode node, String path) {
        if (!node.isString()) {
            problems.add(path, "api.notText");
            return null;
        }
        String text = node.stringValue();
        if (text.length() > LONGEST_TEXT) {
            problems.add(path, "text.tooLong", String.valueOf(text.length()), String.valueOf(LONGEST_TEXT));
        } else if (text.chars().anyMatch(Character::isISOControl)) {
            problems.add(path, "text.control");
        }
        return text;
    }

    private static <R> R construct(Class<R> type, RecordComponent[] components, @Nullable Object[] values) {
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName(), e);
        }
    }
}
