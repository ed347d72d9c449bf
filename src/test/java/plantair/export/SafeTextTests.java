package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The starting signs are those of the OWASP page on CSV injection, from memory; blanks before them are our own. */
final class SafeTextTests {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-2",
                "@SUM(A1)",
                "\tx",
                "\rx",
                "  =1",
                "\n=1",
                "\u00A0-1",
                "\u2003@x",
                "\uFEFF=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20x",
                "=HYPERLINK(\"x\";\"y\")"
            })
    void disarmsWhatStartsAsAFormulaDoes(String text) {
        assertThat(SafeText.of(text)).isEqualTo("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "Ann", "C-1", "a=b", "1-2", "'n", "é", "60 % = good", "\nnote"})
    void leavesOtherTextAsItIs(String text) {
        assertThat(SafeText.of(text)).isEqualTo(text);
    }

    /** One more apostrophe, or taking it away would leave "=1". */
    @ParameterizedTest
    @ValueSource(strings = {"", "Ann", "=1", "'=1", "''=1", "'", "'' =1", "'Ann", "-", "'\tx"})
    void givesEveryTextBack(String text) {
        assertThat(SafeText.undo(SafeText.of(text))).isEqualTo(text);
    }
}
