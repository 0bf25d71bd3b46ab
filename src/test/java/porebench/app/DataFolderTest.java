package porebench.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {
    private static final Path HOME = Path.of("/home/ada").toAbsolutePath();

    @Test
    void followsTheCustomOfTheSystem() {
        assertThat(DataFolder.of(Map.of(), "Linux", HOME).folder()).isEqualTo(HOME.resolve(".local/share/porebench"));
        assertThat(DataFolder.of(Map.of(), "Mac OS X", HOME).folder())
                .isEqualTo(HOME.resolve("Library/Application Support/Porebench"));
        assertThat(DataFolder.of(Map.of(), "Windows 11", HOME).folder())
                .isEqualTo(HOME.resolve("AppData/Roaming/Porebench"));
    }

    @Test
    void followsTheEnvironmentWhereItIsAbsolute() {
        String data = Path.of("/data").toAbsolutePath().toString();
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", data), "Linux", HOME).folder())
                .isEqualTo(Path.of(data, "porebench"));
        assertThat(DataFolder.of(Map.of("APPDATA", data), "Windows 11", HOME).folder())
                .isEqualTo(Path.of(data, "Porebench"));
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", "data"), "Linux", HOME).folder())
                .isEqualTo(HOME.resolve(".local/share/porebench"));
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", ""), "Linux", HOME).folder())
                .isEqualTo(HOME.resolve(".local/share/porebench"));
    }

    @Test
    void logsStandWhereTheSystemKeepsLogs() {
        String state = Path.of("/state").toAbsolutePath().toString();
        assertThat(DataFolder.of(Map.of(), "Linux", HOME).logs()).isEqualTo(HOME.resolve(".local/state/porebench"));
        assertThat(DataFolder.of(Map.of("XDG_STATE_HOME", state), "Linux", HOME).logs())
                .isEqualTo(Path.of(state, "porebench"));
        assertThat(DataFolder.of(Map.of(), "Mac OS X", HOME).logs()).isEqualTo(HOME.resolve("Library/Logs/Porebench"));
        assertThat(DataFolder.of(Map.of(), "Windows 11", HOME).logs())
                .isEqualTo(HOME.resolve("AppData/Local/Porebench/logs"));
        assertThat(DataFolder.of(Map.of("LOCALAPPDATA", state), "Windows 11", HOME)
                        .logs())
                .isEqualTo(Path.of(state, "Porebench", "logs"));
    }
}
