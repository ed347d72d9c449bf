package plantair;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/** Keeps a reading as one column of text, number and unit code as typed: {@code 95.0 [psi]}. */
@Converter(autoApply = true)
class EnteredConverter implements AttributeConverter<Entered, String> {

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable Entered entered) {
        return entered == null ? null : entered.text();
    }

    @Override
    public @Nullable Entered convertToEntityAttribute(@Nullable String text) {
        return text == null ? null : Entered.parse(text);
    }
}
