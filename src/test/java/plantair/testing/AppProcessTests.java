package plantair.testing;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class AppProcessTests {

    @TempDir
    private Path directory;

    @Test
    void showsTheLogOfAnApplicationThatCannotStart() {
        assertThatThrownBy(() -> AppProcess.onH2File(directory, "--server.port=-2"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("server.port");
    }
}
