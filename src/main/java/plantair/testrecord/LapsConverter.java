package plantair.testrecord;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;

/** Keeps the marks of a run as one column of text: {@code 150 [psi] @ 12.4 s; 160 [psi] @ 31.0 s}. */
@Converter(autoApply = true)
class LapsConverter implements AttributeConverter<Laps, String> {

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable Laps laps) {
        return laps == null ? null : laps.text();
    }

    @Override
    public @Nullable Laps convertToEntityAttribute(@Nullable String text) {
        return text == null ? null : Laps.parse(text);
    }
}
