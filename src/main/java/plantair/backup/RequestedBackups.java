package plantair.backup;

import java.io.IOException;
import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;

/** Answers the command that asks the running program for a backup. */
@Configuration(proxyBeanMethods = false)
@EnableScheduling
class RequestedBackups {

    private final Backups backups;
    private final Requests requests;

    RequestedBackups(Backups backups) {
        this.backups = backups;
        this.requests = new Requests(backups.folder());
    }

    @Scheduled(fixedDelayString = "PT1S")
    void answer() throws IOException {
        for (String id : requests.take()) {
            requests.answer(id, made());
        }
    }

    private String made() {
        try {
            return backups.make(BackupKind.BY_HAND).name();
        } catch (BackupFailed inTheLogAndOnThePage) {
            return "";
        }
    }
}
