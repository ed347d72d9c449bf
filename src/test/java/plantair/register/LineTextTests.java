package plantair.register;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LineTextTests {

    @ParameterizedTest
    @ValueSource(strings = {"a\tb", "a\nb", "a\rb", "a\0b", "a\\tb", "a\\nb", "\\N", "\\", "\\\\", "", " a ", "a=b"})
    void tellsEveryTextFromEveryOther(String text) {
        String line = LineText.of(text);

        assertThat(line).doesNotContain("\t", "\n", "\r", "\0").isNotEqualTo(LineText.of(null));
        assertThat(read(line)).isEqualTo(text);
    }

    @Test
    void tellsNothingFromAnEmptyText() {
        assertThat(LineText.of(null)).isEqualTo("\\N");
        assertThat(LineText.of("")).isEmpty();
    }

    /** Reads a field back: if that gives every text, no two texts are written alike. */
    private static String read(String field) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < field.length(); i++) {
            char c = field.charAt(i);
            text.append(c == '\\' ? "\\\t\n\r\0".charAt("\\tnr0".indexOf(field.charAt(++i))) : c);
        }
        return text.toString();
    }
}
