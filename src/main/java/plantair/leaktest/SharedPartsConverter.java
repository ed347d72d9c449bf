package plantair.leaktest;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;

/** Keeps the shared errors of a capacity as one column of text. */
@Converter(autoApply = true)
class SharedPartsConverter implements AttributeConverter<SharedParts, String> {

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable SharedParts parts) {
        return parts == null ? null : parts.text();
    }

    @Override
    public @Nullable SharedParts convertToEntityAttribute(@Nullable String text) {
        return text == null ? null : SharedParts.parse(text);
    }
}
