package plantair.runlog;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import plantair.attachment.FileHolder;
import plantair.register.ChangeKind;

/** Logged runs keep the file of the logger among the pieces. */
@Component
@Order(2)
final class LogHolder implements FileHolder {

    private final LoggedRuns runs;

    LogHolder(LoggedRuns runs) {
        this.runs = runs;
    }

    @Override
    public List<String> recordsWith(String sha256) {
        return runs.idsWith(sha256).stream()
                .map(id -> ChangeKind.LOGGED_RUN + " " + id)
                .toList();
    }

    @Override
    public String ending(String sha256) {
        return "txt";
    }
}
