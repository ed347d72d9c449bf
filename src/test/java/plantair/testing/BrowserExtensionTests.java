package plantair.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class BrowserExtensionTests {

    @Test
    void skipsOnAMachineWithoutABrowser() {
        var result = BrowserExtension.evaluate(Map.of(), Optional.empty(), "x");

        assertThat(result.isDisabled()).isTrue();
    }

    @Test
    void failsWithoutABrowserWhereCiIsSet() {
        assertThatThrownBy(() -> BrowserExtension.evaluate(Map.of("CI", "true"), Optional.empty(), "x"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no Chromium found");
    }

    @Test
    void takesTheBrowserThatTheEnvironmentNames() {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");

        assertThat(BrowserExtension.chromium(Map.of("CHROMIUM", java.toString())))
                .contains(java);
    }
}
